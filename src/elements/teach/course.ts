import { dayOf, dueOn, withMisstep, withRight } from '../../teach/check/progress.ts';
import type { Note, Progress } from '../../teach/check/progress.ts';
import { progressKeeper } from '../../teach/check/progress-kept.ts';
import { courseSaid } from './course-said.ts';

const storage = progressKeeper();
const today = (): number => dayOf(new Date());

/** Notes a right answer. */
export const noteRight = (at: Parameters<typeof withRight>[1]): boolean =>
  storage.keep((progress) => withRight(progress, at, today()));

/** Notes a wrong idea, to come back after a while. */
export const noteMisstep = (at: Parameters<typeof withMisstep>[1]): boolean =>
  storage.keep((progress) => withMisstep(progress, at, today()));

/** Marks in the list of lessons what the reader has done, and lists what is worth another look. */
export class CourseElement extends HTMLElement {
  connectedCallback(): void {
    this.#show(storage.load());
    this.addEventListener('click', this.#erase);
  }

  disconnectedCallback(): void {
    this.removeEventListener('click', this.#erase);
  }

  #part = (name: string): HTMLElement | null => this.querySelector(`[data-part="${name}"]`);

  #erase = (event: Event): void => {
    if (!(event.target instanceof Element) || !event.target.closest('[data-does="erase"]')) return;
    const gone = storage.erase();
    this.#show(storage.load());
    this.#say(gone ? 'It is erased.' : 'This browser does not let the page erase it.');
  };

  #show(progress: Progress | null): void {
    const done = progress?.right ?? {};
    for (const mark of this.querySelectorAll<HTMLElement>('[data-done]')) {
      const right = done[mark.dataset['done'] ?? ''] ?? 0;
      mark.textContent = right > 0 ? ` · ✓ ${right} answered rightly` : '';
    }
    const said = courseSaid(progress);
    if (said !== '') this.#say(said);
    this.querySelector('[data-does="erase"]')?.toggleAttribute(
      'disabled',
      !Object.values(done).some((right) => right > 0) && (progress?.notes ?? []).length === 0,
    );
    const due = progress ? dueOn(progress, today()) : [];
    this.#part('again')?.toggleAttribute('hidden', due.length === 0);
    this.#part('notes')?.replaceChildren(...due.flatMap((note) => this.#line(note)));
  }

  #line({ page, anchor, misstep }: Note): HTMLElement[] {
    const lesson = [...this.querySelectorAll<HTMLAnchorElement>('a[data-lesson]')].find(
      ({ dataset }) => dataset['lesson'] === page,
    );
    // A lesson that has since been renamed has no link to give.
    if (!lesson) return [];
    const link = Object.assign(document.createElement('a'), {
      href: `${lesson.href}#${anchor}`,
      textContent: lesson.textContent.trim(),
    });
    const line = document.createElement('li');
    line.append(link, ` There: “${misstep}”.`);
    return [line];
  }

  #say(text: string): void {
    const place = this.#part('kept');
    if (place) place.textContent = text;
  }
}
