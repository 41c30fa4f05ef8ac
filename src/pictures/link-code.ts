import { qrSvg } from './qr.ts';

/** The most a code of middling redundancy holds, in bytes (ISO/IEC 18004, memory). */
const mostBytes = 2331;

/** A link as a QR code; nothing where it is longer than a code holds. */
export const linkCode = (link: string): string =>
  link.length > mostBytes ? '' : qrSvg(link, 'A code that opens this comparison');
