import { describe, expect, it } from 'vitest';
import { thinned } from '../../src/figure-kit/thinned.ts';

// Own calculation: what is left must run within 0.04 px of every point that was left out.
describe('a path with fewer points', () => {
  it('keeps its corners, its ends and what bends', () => {
    expect(thinned('M0,0L5,0.01L10,0L10,5')).toBe('M0,0L10,0L10,5');
    expect(thinned('M0,0L5,0.1L10,0')).toBe('M0,0L5,0.1L10,0');
  });

  it('keeps every line of it, and whether it is closed', () => {
    expect(thinned('M0,0L1,0L2,0ZM5,5L6,6L7,7')).toBe('M0,0L2,0ZM5,5L7,7');
  });

  it('turns back where the line does, and leaves a closed outline its shape', () => {
    expect(thinned('M0,0L9,0L3,0')).toBe('M0,0L9,0L3,0');
    expect(thinned('M0,0L4,0L4,4L0,4L0,0')).toBe('M0,0L4,0L4,4L0,4L0,0');
  });

  it('leaves other paths as they are', () => {
    expect(thinned('M0,0A5,5,0,0,1,5,5')).toBe('M0,0A5,5,0,0,1,5,5');
    expect(thinned('M0,0H5V5')).toBe('M0,0H5V5');
  });
});
