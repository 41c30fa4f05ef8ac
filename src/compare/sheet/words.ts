/** The sentence beside the code of a printed comparison. */
export const codeSaid = (fits: boolean): string =>
  fits
    ? 'The code opens this comparison, all of it, where it can be changed. Nothing is stored anywhere else.'
    : 'This comparison is longer than a code holds. Save it as a file, or send its link.';
