import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import subsetFont from 'subset-font';

const face = 'src/styles/fonts/plex-sans.woff2';

/** The weights that drawings and their words use. */
const weights = [400, 600];

/**
 * Puts the site's own face, and none of the machine's, at hand of the library that draws: it finds faces through
 * fontconfig, which reads this when the first text is drawn.
 */
async function useFace(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'faces-'));
  const whole = readFileSync(face);
  const signs = String.fromCodePoint(...Array.from({ length: 0x2300 }, (_, index) => index + 1));
  for (const wght of weights) {
    const one = await subsetFont(whole, signs, { targetFormat: 'truetype', variationAxes: { wght } });
    writeFileSync(join(folder, `${wght}.ttf`), one);
  }
  const config = join(folder, 'fonts.conf');
  writeFileSync(
    config,
    `<?xml version="1.0"?><fontconfig><dir>${folder}</dir><cachedir>${join(folder, 'cache')}</cachedir></fontconfig>`,
  );
  process.env['FONTCONFIG_FILE'] = config;
  process.env['PANGOCAIRO_BACKEND'] = 'fontconfig';
}

/** The face has no subscript figures, which browsers take from another: ordinary ones, lowered, stand in. */
const lowered = (svg: string): string =>
  svg.replaceAll(
    /[₀-₉]/g,
    (figure) => `<tspan baseline-shift="sub" font-size="70%">${figure.normalize('NFKC')}</tspan>`,
  );

let ready: Promise<void> | undefined;

/** Pictures drawn before, by what is on them: a build draws only those that changed. */
const drawn = 'node_modules/.cache/pictures';

/** An SVG that stands alone as a PNG of its own size, in few colours. */
export async function pngOf(svg: string): Promise<Uint8Array> {
  const { default: sharp } = await import('sharp');
  const settled = lowered(svg);
  const by = [settled, readFileSync(face), JSON.stringify(sharp.versions)];
  const hash = createHash('sha256');
  for (const part of by) hash.update(part);
  const kept = join(drawn, `${hash.digest('hex').slice(0, 32)}.png`);
  if (existsSync(kept)) return readFileSync(kept);
  await (ready ??= useFace());
  const png = await sharp(Buffer.from(settled)).png({ palette: true, effort: 4 }).toBuffer();
  mkdirSync(drawn, { recursive: true });
  writeFileSync(kept, png);
  return png;
}
