// Makes the two font files the site serves, from the packages that carry the full faces.
// Run with `npm run fonts` after a face's version or the set of characters changes.
import { readFile, writeFile } from 'node:fs/promises';
import subsetFont from 'subset-font';

const latin = String.fromCodePoint(
  ...Array.from({ length: 95 }, (_, i) => 32 + i),
  0xa0,
  0xa3,
  0xa7,
  0xb0,
  0xb1,
  0xb2,
  0xb3,
  0xb5,
  0xb7,
  0xbc,
  0xbd,
  0xbe,
  ...Array.from({ length: 64 }, (_, i) => 0xc0 + i),
);
const text = latin + '–—‘’“”…′″‹›•−∕€→←↑↓≤≥≈≠√∞';

/** Letters MathML turns italic, Greek and digits, operators the lessons' formulas use. */
const range = (from, to) =>
  Array.from({ length: to - from + 1 }, (_, i) => String.fromCodePoint(from + i)).join('');
const math =
  latin.slice(0, 95) + range(0x1d434, 0x1d467) + 'ℎ' + '𝛼𝛽𝛾𝜃𝜇𝜉𝜎𝜑𝜙αβγθµμξσφϕ' + '×÷±−·⋅≈≤≥≠√∑∏∞∂⁡⁢′°%…→⇒|‖∣';

const jobs = [
  {
    from: '@fontsource-variable/ibm-plex-sans/files/ibm-plex-sans-latin-wght-normal.woff2',
    to: 'plex-sans.woff2',
    characters: text,
    options: { variationAxes: { wght: { min: 400, max: 700, default: 400 } } },
  },
  {
    from: '@fontsource/stix-two-math/files/stix-two-math-latin-400-normal.woff2',
    to: 'stix-math.woff2',
    characters: math,
    options: {},
  },
];

for (const { from, to, characters, options } of jobs) {
  const full = await readFile(new URL(import.meta.resolve(from)));
  const small = await subsetFont(full, characters, { targetFormat: 'woff2', ...options });
  await writeFile(new URL(to, import.meta.url), small);
  console.log(`${to}: ${full.length} → ${small.length} bytes`);
}
