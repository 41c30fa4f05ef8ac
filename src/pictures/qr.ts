import { encode } from 'uqr';

/** White modules all around, as the standard for QR codes asks for (ISO/IEC 18004, memory). */
const QUIET = 4;

/** A QR code of the text as an SVG in two classes, `kit-qr-ground` and `kit-qr-ink`; one unit is one module. */
export function qrSvg(text: string, label: string): string {
  const { data, size } = encode(text, { ecc: 'M', border: QUIET });
  const runs = data.flatMap((line, y) =>
    [
      ...line
        .map((dark) => (dark ? '1' : '0'))
        .join('')
        .matchAll(/1+/g),
    ].map(({ index, 0: run }) => `M${index} ${y}h${run.length}v1h-${run.length}z`),
  );
  return (
    `<svg class="kit-qr" viewBox="0 0 ${size} ${size}" role="img" aria-label="${label}">` +
    `<rect class="kit-qr-ground" width="${size}" height="${size}"></rect>` +
    `<path class="kit-qr-ink" d="${runs.join('')}"></path></svg>`
  );
}
