import { globSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { grounds, inked, pictureStyle } from '../../src/pictures/style.ts';

/** All that a page has, as the page in a browser gives it. */
const css = globSync('src/styles/**/*.css')
  .sort()
  .map((file) => readFileSync(file, 'utf8'))
  .join('\n');

describe('the style of a picture', () => {
  it.each(grounds)('on the %s ground leaves no variable and nothing of the page', (ground) => {
    const { rules } = pictureStyle(css, ground);
    expect(rules).toContain('.kf-plot .kf-value{font-weight: 600;}');
    expect(rules).not.toMatch(/var\(|@|header\.site|kf-figure/);
    expect(rules.split('{').length).toBe(rules.split('}').length);
  });

  it('takes its inks from the sheet, by day and by night', () => {
    const [light, dark, clear] = grounds.map((ground) => pictureStyle(css, ground).inks);
    // As written in the style sheet.
    expect(light?.get('--text')).toBe('#17222e');
    expect(dark?.get('--text')).toBe('#edf2f7');
    expect(clear).toEqual(light);
    expect([...(dark?.keys() ?? [])]).toEqual([...(light?.keys() ?? [])]);
  });

  it('is the same from the sheet as browsers give it back, without comments and breaks', () => {
    const minified = css
      .replaceAll(/\/\*[^]*?\*\//g, '')
      .replaceAll(/\s+/g, ' ')
      .replaceAll(/ ?([{};:,]) ?/g, '$1');
    const bare = (text: string) => text.replaceAll(/[\s;]/g, '');
    // A selector's own spaces and a value's are kept by both.
    expect(bare(pictureStyle(minified, 'dark').rules)).toBe(bare(pictureStyle(css, 'dark').rules));
  });

  it('refuses a variable that has no value', () => {
    expect(() => inked('fill: var(--nowhere)', new Map())).toThrow(
      'the style sheet gives --nowhere no value',
    );
  });
});
