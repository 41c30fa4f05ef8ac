/** Whether a name in a log has the form of a blind sheet's codes: two consonants, two digits, in either case. */
export const isSheetCode = (name: string): boolean =>
  /^[CFHJKMNPRTWX]{2}[2345679]{2}$/.test(name.trim().toUpperCase());
