import katex from 'katex';

/** A formula in TeX with named places, `{{name}}`, and the values that stand in them. */
export interface Formula {
  tex: string;
  values: Record<string, string>;
}

/**
 * The formula as MathML, each value in an element of its own (`mn[data-value]`), so that a page can put other
 * numbers in without carrying a typesetter. The TeX, values put in, goes along for copying.
 */
export function mathOf({ tex, values }: Formula): string {
  const names = Object.keys(values);
  const marked = tex.replace(/\{\{(\w+)\}\}/g, (_, name: string) => {
    const index = names.indexOf(name);
    if (index < 0) throw new RangeError(`formula ${tex} has no value for ${name}`);
    return String(9_000_001 + index);
  });
  const math = katex.renderToString(marked, {
    output: 'mathml',
    displayMode: true,
    strict: 'error',
    throwOnError: true,
  });
  return names.reduce(
    (html, name, index) =>
      html
        .replaceAll(`<mn>${9_000_001 + index}</mn>`, `<mn data-value="${name}">${values[name]}</mn>`)
        .replaceAll(String(9_000_001 + index), values[name] ?? ''),
    math,
  );
}
