import type { PlanEntry } from '../../comparison/entry.ts';

/** What would change a closed log, or the sheet that its key belongs to. */
const writers = ['empty', 'take-add', 'take-replace', 'shuffle'];
const ofTheSheet = ['runs', 'batches', 'control', 'blind', 'seed'];

/** Opens or shuts what belongs to a closed log: its key, its fields, and those of the sheet. */
export function showClosed(root: HTMLElement, plan: PlanEntry): void {
  const closed = plan.closed === true;
  const hide = (name: string, hidden: boolean): void => {
    const part = root.querySelector<HTMLElement>(`[data-part="${name}"]`);
    if (part) part.hidden = hidden;
  };
  hide('key-shut', closed);
  hide('key-open', !closed);
  hide('log-closed', !closed);
  for (const act of [...writers, 'print-key']) {
    const button = root.querySelector<HTMLButtonElement>(`[data-act="${act}"]`);
    if (button) button.disabled = act === 'print-key' ? !closed : closed;
  }
  const fields = [
    '[data-part="form"] :is(input, select, button)',
    ...ofTheSheet.map((name) => `[data-part="plan"] [data-field="${name}"] :is(input, select)`),
  ].join();
  for (const field of root.querySelectorAll<HTMLInputElement | HTMLSelectElement | HTMLButtonElement>(
    fields,
  )) {
    // A text field that can only be read can still be reached and copied from.
    if (field instanceof HTMLInputElement && field.type === 'text') field.readOnly = closed;
    else field.disabled = closed;
  }
}
