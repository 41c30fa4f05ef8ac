/** As much of a name as fits a drawing; the caption and the table have it whole. */
export function shortened(name: string, most: number): string {
  const letters = [...name];
  return letters.length > most ? `${letters.slice(0, most - 1).join('')}…` : name;
}
