import type { ProblemSet } from '../../exercises/set/index.ts';
import { escaped } from '../check/html.ts';
import { contextNames } from './names.ts';

/** The address of a sheet as it is printed, and the code by which a telephone opens it. */
export interface Printed {
  address: string;
  /** An SVG; nothing until it is drawn. */
  qr: string;
}

/** The head of a printed sheet: what it is, its settings, its address. */
export function headHtml(set: ProblemSet, title: string, id: string, { address, qr }: Printed): string {
  const { context, count, level, marks, seed, version } = set;
  const story = contextNames[context].replace(/ \(.*\)$/, '');
  const much = count === 1 ? '1 problem' : `${count} problems`;
  return (
    `<header class="kit-head"><div><h2 id="${id}">${title}, version ${version}</h2>` +
    `<p>${much}, ${marks} marks. ${escaped(story)}, level ${level}, seed ${seed}. All numbers are invented.</p>` +
    `<p class="kit-address">${escaped(address)}</p></div>${qr}</header>`
  );
}
