/** Writes a text where it is another than what stands there: the same text written again costs a layout. */
export function writeText(place: Element | null | undefined, text: string): void {
  if (place && place.textContent !== text) place.textContent = text;
}
