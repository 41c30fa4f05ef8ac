/** Under which name guesses are stored on the reader's machine. */
export const guessesKey = 'keenfold.guesses';

/** Whether guesses are stored; where storage is denied there are none. */
export function hasGuesses(): boolean {
  try {
    return localStorage.getItem(guessesKey) !== null;
  } catch {
    return false;
  }
}
