/** Which of the two knives of a comparison is meant: the one looked at, or the one it is compared with. */
export type Role = 'subject' | 'baseline';
