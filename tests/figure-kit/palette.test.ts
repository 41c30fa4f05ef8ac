import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { contrast } from './contrast.ts';

const css = readFileSync('src/styles/colours.css', 'utf8');

function inks(block: string | undefined): Record<string, string> {
  return Object.fromEntries(
    [...(block ?? '').matchAll(/--([a-z-]+):\s*(#[0-9a-f]{3,6});/g)].map(([, name = '', hex = '']) => [
      name,
      hex,
    ]),
  );
}
const [light, dark] = [...css.matchAll(/:root\s*\{([^}]*)\}/g)].map(([, block]) => inks(block));

// Relative luminance and contrast as WCAG 2.2 defines them. Black on white is 21:1 by that definition;
// #767676 on white is its commonly cited lightest grey of at least 4.5:1, #595959 of at least 7:1.
describe('the contrast ratio', () => {
  it('agrees with the cited values', () => {
    expect(contrast('#000', '#fff')).toBeCloseTo(21, 6);
    expect(contrast('#fff', '#fff')).toBe(1);
    expect(contrast('#767676', '#ffffff')).toBeGreaterThanOrEqual(4.5);
    expect(contrast('#777777', '#ffffff')).toBeLessThan(4.5);
    expect(contrast('#595959', '#ffffff')).toBeGreaterThanOrEqual(7);
    expect(contrast('#5a5a5a', '#ffffff')).toBeLessThan(7);
  });
});

describe.each([
  ['light', light],
  ['dark', dark],
])('the inks of the %s sheet', (_name, ink) => {
  const of = (name: string): string => {
    const hex = ink?.[name];
    if (!hex) throw new Error(`no ink --${name} in src/styles/colours.css`);
    return hex;
  };

  it.each([
    ['text', 'paper'],
    ['text', 'sheet'],
    ['text', 'warn-paper'],
    ['faint', 'paper'],
    ['faint', 'sheet'],
    ['accent', 'paper'],
    ['accent', 'sheet'],
    ['paper', 'accent'],
    ['on-accent', 'accent'],
    ['text', 'range'],
    ['warn', 'sheet'],
    ['warn', 'paper'],
    ['text', 'blade'],
    ['text', 'rope'],
  ])('%s on %s is text: 7:1', (front, back) => {
    expect(contrast(of(front), of(back))).toBeGreaterThanOrEqual(7);
  });

  it.each([
    ['geometry', 'sheet'],
    ['finish', 'sheet'],
    ['steel', 'sheet'],
    ['line', 'sheet'],
    ['line', 'paper'],
    ['warn', 'warn-paper'],
    ['geometry', 'geometry-ground'],
    ['finish', 'finish-ground'],
    ['steel', 'steel-ground'],
  ])('%s on %s is a mark: 3:1', (front, back) => {
    expect(contrast(of(front), of(back))).toBeGreaterThanOrEqual(3);
  });
});
