/** Letters and digits of a blind sheet's codes: none that looks like another. */
export const codeLetters = 'CFHJKMNPRTWX';
export const codeDigits = '2345679';

const form = new RegExp(`^[${codeLetters}]{2}[${codeDigits}]{2}$`);

/**
 * Whether a name in a log has the form of a blind sheet's codes: two consonants, two digits, in either case.
 *
 * @example isSheetCode('km47') // → true
 * @example isSheetCode('KM80') // → false
 */
export const isSheetCode = (name: string): boolean => form.test(name.trim().toUpperCase());
