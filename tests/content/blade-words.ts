/** Words of blades and what is done to them, as a school's filter may look for them. */
const words =
  /(?<![a-z])(?:kni(?:fe|ves)|blades?|(?:edge|edged|edges)|cut(?:s|ting|ter)?|slic(?:e|es|ing)|steels?|sharp(?:en|ens|ened|ening|er|ness|est)?|blunt(?:ed|ing)?|dull|grits?|re?grind(?:s|ing)?|grind(?:s|ing|er)?|hon(?:e|ed|es|ing)|whet(?:stone)?|bevels?|stab(?:s|bing)?|weapons?|razors?|swords?|daggers?|scissors|apex|spine|hrc|rigging|carbides?)(?![a-z])/gi;

/** Every word of blades in a text; a page's own markup counts too. */
export const bladeWords = (text: string): string[] => [...text.matchAll(words)].map(([word]) => word);
