import { escaped } from '../check/html.ts';
import { keyOf } from '../../exercises/set/index.ts';
import type { Problem } from '../../exercises/index.ts';
import type { Tally } from './tally.ts';

/** A question asked of a class, and what came back; null before anything did. */
export interface Asking {
  problem: Problem;
  tally: Tally | null;
}

/** The rows of the tally: an idea a row, its answer and count for each asking. */
export function tallyRows(askings: readonly Asking[]): string {
  const ids = [...new Set(askings.flatMap(({ problem }) => problem.missteps.map(({ id }) => id)))];
  return [
    row('right', '', askings, ({ problem, tally }) => [keyOf(problem).answer, tally?.right]),
    ...ids.map((id) =>
      row(id, ideaOf(id, askings), askings, ({ problem, tally }) => [
        keyOf(problem).missteps.find((misstep) => misstep.id === id)?.answer,
        tally?.missteps.find((misstep) => misstep.id === id)?.count,
      ]),
    ),
    row('something else', '', askings, ({ tally }) => ['', tally?.other]),
    row('not to be read', '', askings, ({ tally }) => ['', tally?.unreadable.length]),
  ].join('');
}

const ideaOf = (id: string, askings: readonly Asking[]): string =>
  askings.flatMap(({ problem }) => problem.missteps).find((misstep) => misstep.id === id)?.idea ?? '';

/** An answer this asking cannot have is a dash; a count not yet taken is left open, to be filled in by hand. */
function row(
  name: string,
  idea: string,
  askings: readonly Asking[],
  of: (asking: Asking) => [answer: string | undefined, count: number | undefined],
): string {
  const cells = askings.map((asking) => {
    const [answer, count] = of(asking);
    return `<td>${escaped(answer ?? '—')}</td><td>${answer === undefined ? '—' : (count ?? '')}</td>`;
  });
  const described = idea === '' ? '' : `<br><small>${escaped(idea)}</small>`;
  return `<tr><th scope="row">${escaped(name)}${described}</th>${cells.join('')}</tr>`;
}
