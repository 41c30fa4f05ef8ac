/** Red, green and blue of `#rgb` or `#rrggbb`, each 0–255. */
function channels(hex: string): number[] {
  const long = hex.length === 4 ? hex.replace(/[^#]/g, '$&$&') : hex;
  return [1, 3, 5].map((at) => Number.parseInt(long.slice(at, at + 2), 16));
}

/** Relative luminance, WCAG 2.2. */
function luminance(hex: string): number {
  const [red = 0, green = 0, blue = 0] = channels(hex).map((channel) => {
    const share = channel / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** Contrast ratio of two colours, 1–21, WCAG 2.2. */
export function contrast(one: string, other: string): number {
  const [low = 0, high = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (high + 0.05) / (low + 0.05);
}
