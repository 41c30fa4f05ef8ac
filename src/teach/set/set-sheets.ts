import type { ProblemSet } from '../../exercises/set/index.ts';
import { setCode } from './address.ts';
import { keyHtml } from './key-html.ts';
import { qrSvg } from '../../pictures/qr.ts';
import { sheetHtml } from './sheet-html.ts';

/** The address at which a set is seen with its key, or done on the screen without it. */
export const setAddress = (page: string, way: 'set' | 'do', set: ProblemSet): string =>
  `${page}#${way}=${setCode(set)}`;

/**
 * Worksheet and key of a set as HTML, each with its address. The worksheet's opens the set to be done on the screen.
 *
 * @param page where the set maker lies, `https://…/class/`
 */
export function setSheets(set: ProblemSet, page: string): { sheet: string; key: string } {
  const [doIt, see] = [setAddress(page, 'do', set), setAddress(page, 'set', set)];
  return {
    sheet: sheetHtml(set, { address: doIt, qr: qrSvg(doIt, 'QR code of the address of this set') }),
    key: keyHtml(set, { address: see, qr: qrSvg(see, 'QR code of the address of this key') }),
  };
}
