/**
 * Leaves out of the browser's Plot what none of our figures uses: maps, colour schemes, dates, bent curves, legends and tips. They
 * are a third of its bytes. A figure that asks for one of them fails at once, by name, in every test that draws it.
 */

/** Modules whose every export is replaced by a function that refuses. */
const refused = {
  '/d3-geo/': 'maps',
  '/d3-color/': 'colours',
  '/d3-scale-chromatic/': 'colour schemes',
  '/d3-time-format/': 'dates',
  '/d3-time/': 'dates',
  '/plot/src/marks/tip.js': 'tips',
  '/plot/src/interactions/pointer.js': 'pointers',
};

/** Modules that Plot calls for every drawing, as they are where nobody asks for what they do. */
const plain = {
  '/plot/src/projection.js': `${refusing('maps')}
    export const createProjection = () => undefined;
    export const hasProjection = () => false;
    export const projectionAspectRatio = () => undefined;
    export { refuse as project, refuse as getGeometryChannels, refuse as xyProjection, refuse as applyPosition };`,
  '/plot/src/curve.js': `import { curveLinear } from "d3";
    ${refusing('curves')}
    export const curveAuto = curveLinear;
    export const maybeCurve = (curve = curveLinear) => (curve === curveLinear ? curve : refuse());
    export const maybeCurveAuto = maybeCurve;`,
  // An area asks of its interval here, and none of ours has one.
  '/plot/src/transforms/bin.js': `${refusing('bins')}
    const dense = (options) => (options?.interval == null ? options : refuse());
    export { dense as maybeDenseIntervalX, dense as maybeDenseIntervalY };
    export { refuse as bin, refuse as binX, refuse as binY, refuse as maybeThresholds };`,
  '/plot/src/legends.js': `${refusing('legends')}
    export const createLegends = () => [];
    export const exposeLegends = () => refuse;
    export { refuse as legend };`,
};

function refusing(what) {
  return `function refuse() { throw new Error("${what} are left out of this Plot: see src/figure-kit/lean-plot.mjs"); }`;
}

/** Colours stand in the style sheet: whatever is asked, no text is a colour, and the rest refuses. */
const colours = 'export function color() { return null; }';

/** Plot's writing of numbers, begun when a number is first written and not as Plot is loaded. */
function atFirstNumber(code) {
  const eager = 'const number = formatNumber(locale);';
  if (!code.includes(eager)) throw new Error(`Plot's format.js has no line ${eager}`);
  return code.replace(eager, 'const number = (value) => formatNumber(locale)(value);');
}

const named = (all, id) => Object.entries(all).find(([part]) => id.includes(part))?.[1];

/** @returns {import('vite').Plugin} */
export function leanPlot() {
  return {
    name: 'lean-plot',
    enforce: 'pre',
    applyToEnvironment: ({ name }) => name === 'client',
    transform(code, id) {
      // It is dear to begin with, and our texts come written.
      if (id.includes('/plot/src/format.js')) return { code: atFirstNumber(code), map: null };
      // A bundler keeps every curve whose prototype is assigned; without those lines the unused ones fall away.
      if (!id.includes('/node_modules/d3-shape/')) return null;
      return { code: code.replaceAll(/^(?!Linear\b)\w+\.prototype = \{[^]*?^\};$/gm, ''), map: null };
    },
    async load(id) {
      if (!id.includes('/node_modules/')) return null;
      const code = named(plain, id);
      if (code) return code;
      const what = named(refused, id);
      if (!what) return null;
      const names = Object.keys(await import(id));
      if (id.includes('/d3-color/')) {
        const others = names.filter((name) => name !== 'color').map((name) => `refuse as ${name}`);
        return `${colours}\n${refusing(what)}\nexport { ${others.join(', ')} };`;
      }
      return `${refusing(what)}\nexport { ${names.map((name) => `refuse as ${name}`).join(', ')} };`;
    },
  };
}
