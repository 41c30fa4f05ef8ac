import { planFieldNamed } from '../../test/plan-fields.ts';
import { isSheetCode } from '../../model/index.ts';
import { firstPlan } from '../../comparison/first-plan.ts';
import { alarmsAsked, powerAsked, simulatedSaid } from '../../topics/plan/simulated.ts';
import { planOf } from '../../topics/plan/values.ts';
import { runsOf } from '../../scene/runs.ts';
import type { Scene } from '../../scene/scene.ts';
import type { ComparisonEntry } from '../../comparison/entry.ts';
import { sheetColumns, sheetRows, sheetSet } from '../../test/sheet-rows.ts';
import { fillRows } from '../page/table-rows.ts';
import { writeText } from '../page/write-text.ts';
import { simulated } from './simulations.ts';

/** The part of the page of runs that plans the next ones; fetched once there is another comparison than the page's own. */

/** The comparison with another order of its sheet. */
export const shuffled = ({ plan = firstPlan, ...entry }: ComparisonEntry): ComparisonEntry => ({
  ...entry,
  plan: { ...plan, seed: (plan.seed + 1) % 1_000_000 },
});

export { keptSheet, lookedEarly, writtenPlan } from '../../test/plan-changes.ts';
export { closedSaid, closeLog, openedSaid, openLogAgain } from '../../test/close-log.ts';

/** The codes a run may be logged under until the log is closed. */
export const openCodes = (now: Scene): string[] =>
  planOf(now).closed
    ? []
    : sheetRows(now).key.flatMap(([, label = '']) => (isSheetCode(label) ? [label] : []));

/** Brings the plan's fields to what is planned; a field being typed in, or with a problem, keeps its text. */
export function showPlanFields(root: HTMLElement, now: Scene): void {
  const plan = planOf(now);
  for (const place of root.querySelectorAll<HTMLElement>('[data-part="plan"] [data-field]')) {
    const input = place.querySelector<HTMLInputElement | HTMLSelectElement>('input, select');
    const text = planFieldNamed(place.dataset['field'] ?? '').show(plan);
    if (!input || input.value === text || input.getAttribute('aria-invalid') === 'true') continue;
    if (input !== document.activeElement || input instanceof HTMLSelectElement) input.value = text;
  }
}

/** Writes the sheet and its key. */
function showSheet(root: HTMLElement, now: Scene): void {
  const { sheet, key } = sheetRows(now);
  const open = Array.from({ length: sheetColumns.length - sheetSet }, () => '');
  const part = (name: string) => root.querySelector<HTMLElement>(`[data-part="${name}"]`);
  fillRows(
    part('sheet'),
    sheet.map((row) => [...row, ...open]),
  );
  fillRows(part('key'), key);
  const section = part('key-section');
  if (section) section.hidden = key.length === 0;
  const print = root.querySelector<HTMLElement>('[data-act="print-key"]');
  if (print) print.hidden = key.length === 0;
}

/** Numbers the figures that are shown as they are read: those about readings come between the others. */
function numberFigures(root: HTMLElement): void {
  root.querySelectorAll('section:not([hidden]) > kf-figure').forEach((figure, index) => {
    writeText(figure.querySelector('[data-part="number"]'), `Figure ${index + 1}`);
    figure.querySelector('.scroll')?.setAttribute('aria-label', `Numbers of figure ${index + 1}`);
  });
}

/**
 * Brings the page to what is planned: fields, sheet and key, and the figures' numbers.
 *
 * @param current gives the scene there is once a simulation has ended
 */
export function showPlan(root: HTMLElement, now: Scene, current: () => Scene): void {
  showPlanFields(root, now);
  showSheet(root, now);
  showEarly(root, now);
  showSimulated(root, now, current);
  numberFigures(root);
}

/** The way to a verdict before its time, where there would be one. */
function showEarly(root: HTMLElement, now: Scene): void {
  const { promised, log } = runsOf(now);
  const part = root.querySelector<HTMLElement>('[data-part="look-early"]');
  if (part) part.hidden = !(promised.waiting && log.low !== null);
}

/** Chances that only a simulation gives: written once they are worked out, away from the page. */
function showSimulated(root: HTMLElement, now: Scene, current: () => Scene): void {
  for (const [name, asked] of [
    ['simulated-power', powerAsked(now)],
    ['simulated-alarms', alarmsAsked(now)],
  ] as const) {
    const place = root.querySelector<HTMLElement>(`[data-part="${name}"]`);
    if (!place) continue;
    place.hidden = asked === null;
    if (asked === null) continue;
    const chance = simulated(asked, () => showSimulated(root, current(), current));
    writeText(place, chance === null ? 'A simulation is running.' : simulatedSaid(asked, chance));
  }
}
