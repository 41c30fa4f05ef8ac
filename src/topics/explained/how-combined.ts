/** What nobody knows, and what the site does about it. It is said of every comparison. */
export const howCombined =
  'Nobody has measured how such effects combine. We give each of three ways a third of the weight.';
