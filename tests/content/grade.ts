/** The sentences of a lesson as they are read: prose, points and questions, without headings, figures, formulas and code. */
export function proseOf(mdx: string): string {
  return mdx
    .replace(/^---\n[\s\S]*?\n---\n/, '')
    .replace(/^import .*$/gm, '')
    .replace(/<Own>[\s\S]*?<\/Own>/g, '')
    .replace(/^## Sources$[\s\S]*/m, '')
    .replace(/<Guess[\s\S]*?ask="([^"]*)"[\s\S]*?\/>/g, '$1\n')
    .replace(/<Figure[\s\S]*?(?:<\/Figure>|\/>)/g, '')
    .replace(/<(?:Worked|Words|Check|Code)\b[^>]*\/>/g, '')
    // A number is read as one word of one syllable: what it is changes with the comparison.
    .replace(/<Num\b[^>]*\/>/g, 'ten')
    .replace(/\s*\(?<Cite\b[^>]*\/>\)?/g, '')
    .replace(/<[^>]+>/g, '')
    .replace(/^#+ .*$/gm, '')
    .replace(/[*_`“”"]/g, '');
}

/** Syllables of an English word, by its groups of vowels; a silent e is left out. Right for nine words in ten. */
export function syllables(word: string): number {
  const letters = word.toLowerCase().replace(/[^a-z]/g, '');
  const sounded = letters
    .replace(/([^cgsxz]|[^cs]h)es$/, '$1')
    .replace(/([^td])ed$/, '$1')
    .replace(/([^aeiouy]l)e$/, '$1y')
    .replace(/e$/, '');
  return Math.max(1, sounded.match(/[aeiouy]+/g)?.length ?? 0);
}

/**
 * The school grade a text can be read in, by Flesch and Kincaid:
 * 0.39 words a sentence + 11.8 syllables a word − 15.59 (Kincaid and others 1975, from memory). A reader of twelve is
 * in grade 6 or 7.
 */
export function gradeOf(text: string): number {
  const sentences = text.split(/[.?!](?:\s|$)|\n\n/).filter((sentence) => /[a-z]/i.test(sentence));
  const words = text.match(/[a-z][a-z’'-]*/gi) ?? [];
  if (words.length === 0) throw new RangeError('text to grade: it has no words');
  const total = words.reduce((sum, word) => sum + syllables(word), 0);
  return (0.39 * words.length) / sentences.length + (11.8 * total) / words.length - 15.59;
}
