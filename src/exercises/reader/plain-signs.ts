const vulgar: Record<string, string> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** The two rows of digits of the Arabic script begin at these. */
const ZEROS = [0x0660, 0x06f0];

const digit = (sign: string): string => {
  const code = sign.charCodeAt(0);
  return String(code - Number(ZEROS.findLast((zero) => code >= zero)));
};

/** Plain signs for the many that look alike or mean the same; what cannot be seen is dropped. */
export function plainSigns(text: string): string {
  return text
    .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅛⅜⅝⅞]/g, (sign) => ` ${String(vulgar[sign])}`)
    .normalize('NFKC')
    .toLowerCase()
    .replace(/\p{Cf}/gu, '')
    .replace(/[٠-٩۰-۹]/g, digit)
    .replace(/٫/g, '.')
    .replace(/٪/g, '%')
    .replace(/[−‐‑‒–—]/g, '-')
    .replace(/[×✕✖·*]/g, 'x')
    .replace(/[⁄∕]/g, '/')
    .replace(/[’‘ʼ٬]/g, "'")
    .replace(/\s+/g, ' ')
    .replace(/ ?\/ ?/g, '/')
    .trim();
}
