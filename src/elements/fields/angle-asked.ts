import { angleQuestions } from '../../comparison/angle-questions.ts';
import type { ComparisonEntry } from '../../comparison/entry.ts';
import { shownNames } from '../../comparison/knife-names.ts';
import { brief } from '../../scene/show.ts';

/** Asks about every angle that looks like both sides together, below the line of angles. */
export function showQuestions(root: HTMLElement, entry: ComparisonEntry): void {
  const asked = new Map(angleQuestions(entry).map((question) => [question.knife, question]));
  const names = shownNames(entry.knives);
  for (const place of root.querySelectorAll<HTMLElement>('[data-part="question"]')) {
    const id = place.closest<HTMLElement>('[data-knife]')?.dataset['knife'] ?? '';
    const question = asked.get(id);
    place.hidden = question === undefined;
    if (!question) continue;
    const [deg, half] = [brief(question.deg), brief(question.perSideIfIncluded)];
    const say = (part: string, text: string) => {
      const element = place.querySelector(`[data-part="${part}"]`);
      if (element && element.textContent !== text) element.textContent = text;
    };
    say(
      'question-text',
      `${names.get(id) ?? ''}, ${deg}°: that looks like both sides together. Most edges have 10 to 30° per side.`,
    );
    say('included', `It’s both sides: use ${half}°`);
    say('per-side', `It’s per side: keep ${deg}°`);
  }
}
