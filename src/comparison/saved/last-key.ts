/** Under which name the last comparison is stored on the visitor's machine. */
export const lastKey = 'keenfold.line-up';
