import { readdirSync, readFileSync } from 'node:fs';

/** Every file below a folder whose name ends so, with its text. */
export const filesBelow = (folder: string, ...endings: string[]): { path: string; text: string }[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((file) => `${folder}/${file.replaceAll('\\', '/')}`)
    .filter((path) => endings.some((ending) => path.endsWith(ending)))
    .sort()
    .map((path) => ({ path, text: readFileSync(path, 'utf8') }));

/** The numbers with a unit that a lesson states outside `<Num>`, `<Cite>`, code, formulas and its head. */
export function bareNumbers(mdx: string): string[] {
  const prose = mdx
    .replace(/^---\n[\s\S]*?\n---\n/, '')
    .replace(/^import .*$/gm, '')
    .replace(/```[\s\S]*?```/g, '')
    .replace(/`[^`]*`/g, '')
    .replace(/<(Num|Cite)\b[^>]*\/>/g, ' ');
  return [
    ...prose.matchAll(
      /[−+±×-]?\d[\d.,]*\s*(?:%|‰|per cent\b|percent\b|°|degrees?\b|[mµu]m\b|HRC\b|HV\b|[MG]Pa\b|thou\b|N\b|times\b)|×\s?\d[\d.,]*/g,
    ),
  ].map(([found]) => found.trim());
}

/** A ratio said as "times longer" or "per cent longer", which nobody can read one way. */
export const saysTimesLonger = (text: string): string[] =>
  [...text.matchAll(/(?:\btimes|×|%|\bper ?cent)\s+(?:longer|more often)\b/gi)].map(([found]) => found);
