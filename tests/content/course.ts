/** A lesson's own words: no head, no imports, no markup of shared parts; what is computed stands as `#`. */
export const ownWords = (mdx: string): string =>
  mdx
    .replace(/^---\n[\s\S]*?\n---\n/, '')
    .replace(/^import .*$/gm, '')
    .replace(/<Guess[\s\S]*?ask="([^"]*)"[\s\S]*?\/>/g, '$1.')
    .replace(/<Figure[\s\S]*?(?:<\/Figure>|\/>)/g, '|')
    .replace(/^#+ .*$/gm, '|')
    .replace(/<Num\b[^>]*\/>/g, '#')
    .replace(/<Cite\b[^>]*\/>/g, '@')
    .replace(/<[^>]+>/g, '')
    .replace(/[*_`]/g, '');

/** The sentences of a lesson, points and questions among them. */
export const sentencesOf = (mdx: string): string[] =>
  ownWords(mdx)
    .split(/(?<=[.?!][”"]?)\s+|\n\n|\n- |\|/)
    .map((sentence) => sentence.replace(/\s+/g, ' ').trim())
    .filter((sentence) => sentence !== '');

/** The words of a sentence, a computed number counting as one. */
export const wordsOf = (sentence: string): string[] =>
  sentence.toLowerCase().match(/[a-z#@][a-z’'-]*|\d[\d.]*/g) ?? [];

/** Every run of `length` words within a sentence. */
export function runsOfWords(mdx: string, length: number): Set<string> {
  const runs = new Set<string>();
  for (const sentence of sentencesOf(mdx)) {
    const words = wordsOf(sentence);
    for (let at = 0; at + length <= words.length; at += 1) runs.add(words.slice(at, at + length).join(' '));
  }
  return runs;
}

/** The parts of a lesson in their order on the page. */
export const partsOf = (mdx: string): string[] =>
  [
    ...mdx
      .replace(/^import .*$/gm, '')
      .matchAll(/<(Guess|Figure|Worked|Own|Check|Code)\b|^## (What this leaves out|Sources)$/gm),
  ].map(([, component, heading]) => component ?? heading ?? '');

/** Words of the glossary that mean one thing only, so that their first use in a lesson can be held to a link. */
export const TERMS = [
  'apex',
  'baseline',
  'careful estimate',
  'confidence interval',
  'depth of contact',
  'edge angle',
  'geometric mean',
  'included angle',
  'lever rule',
  'median particle size',
  'microbevel',
  'quick sum',
  'primary grind',
  'push cut',
  'if the forces add',
  'thickness behind the edge',
];

/** The terms a lesson uses before it links them, or without ever doing so; headings and asked guesses cannot link. */
export function unlinked(mdx: string): string[] {
  const text = mdx
    .replace(/^---\n[\s\S]*?\n---\n/, '')
    .replace(/^import .*$|^#+ .*$/gm, '')
    .replace(/<Guess[\s\S]*?\/>/g, '')
    .replace(/<(?:Num|Slider|Words|Worked|Code|Check|Cite|Figure)\b[^>]*>/g, '')
    // What a link is to is not yet its text.
    .replace(/<Term word="[^"]*">/g, '<Term>');
  return TERMS.filter((term) => {
    const at = text.search(new RegExp(`\\b${term}\\b`, 'i'));
    const before = text.slice(0, at);
    return at >= 0 && before.lastIndexOf('<Term>') <= before.lastIndexOf('</Term>');
  });
}
