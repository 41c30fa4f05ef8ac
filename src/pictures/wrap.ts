/** How wide a text is at a size, px. */
export type Measure = (text: string, sizePx: number, bold: boolean) => number;

/** Where nothing can be measured: a little more than the face needs on the average, so that no line runs out of its place. */
export const guessed: Measure = (text, sizePx, bold) => [...text].length * sizePx * (bold ? 0.58 : 0.55);

/**
 * A text in lines no wider than there is room for; what does not fit the last line is cut off with an ellipsis. A word
 * wider than a whole line is broken where it must be.
 */
export function wrap(text: string, width: number, most: number, fits: (line: string) => number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/).filter(Boolean)) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (fits(longer) <= width) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    line = word;
    while (fits(line) > width && [...line].length > 1) {
      const head = longestHead(line, width, fits);
      lines.push(head);
      line = line.slice(head.length);
    }
  }
  if (line !== '') lines.push(line);
  if (lines.length <= most) return lines;
  const last = lines[most - 1] ?? '';
  return [...lines.slice(0, most - 1), cut(last, width, fits)];
}

function longestHead(text: string, width: number, fits: (line: string) => number): string {
  const signs = [...text];
  let head = signs[0] ?? '';
  for (const sign of signs.slice(1)) {
    if (fits(head + sign) > width) break;
    head += sign;
  }
  return head;
}

function cut(line: string, width: number, fits: (line: string) => number): string {
  const signs = [...line];
  while (signs.length > 0 && fits(`${signs.join('')}…`) > width) signs.pop();
  return `${signs.join('').trimEnd()}…`;
}
