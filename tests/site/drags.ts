/** What a drawing says of itself: px to one unit of its upright axis, and its first circle in its own px. */
interface Drawn {
  perUnit: number;
  circle: { cx: number; cy: number; r: number };
}

/** A place in the values of the drawing's own axes; on an axis of bands the band, counted from 0. */
export type At = readonly [x: number, y: number];
export type Place = At | ((drawn: Drawn) => At);

export interface Drag {
  path: string;
  of: string;
  from: Place;
  to: Place;
  control: string;
  /** What its slider then stands at, computed by hand from the place: to within half a step. */
  value?: number;
  /** What the figure's table then says, where that is the place itself: row, column, number, and what half a step is. */
  table?: readonly [row: RegExp, column: number, value: number, half: number];
}

const deg = (across: number, up: number): number => (Math.atan2(across, up) * 180) / Math.PI;
const tan = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

export const one = 'lessons/forty-and-forty';
export const two = 'lessons/less-of-a-bad-thing';
const five = 'lessons/what-a-grit-is';
const six = 'lessons/behind-the-edge';

/** Centre of the sections laid over each other, px: the middle of what axis and labels leave of 640. */
const overlaidPx = 54 + 62 + (640 - 54 - 2 * 62 - 8) / 2;

/**
 * Everything that can be dragged: where it is taken, where it is let go.
 *
 * From the third lesson on they open with two knives: 24° at 0.6 mm, P1200, 57 HRC, flat from 3 mm at 14 mm; and 14° at
 * 0.25 mm, P220, 61 HRC, hollow from 2.6 mm at 18 mm. Grain sizes are those of ISO 6344, which lists from P80 on; HV of
 * 60 HRC is 697 by ASTM E140.
 */
export const drags: readonly Drag[] = [
  // A fifth more than the bar before.
  { path: one, of: 'growing-bars', from: [2, 1.9], to: [2, 1.4 * 1.2], control: 'percentage.2', value: 20 },
  { path: two, of: 'less-bars', from: [1.4, 1], to: [1.25, 1], control: 'less', value: 25 },
  // Half of it left: the inverse is 2.
  { path: two, of: 'less-bars', from: [1.6, 2], to: [2, 2], control: 'less', value: 50 },
  { path: two, of: 'less-lines', from: [60, 1], to: [30, 1], control: 'less', value: 70 },
  { path: two, of: 'there-and-back', from: [1.4, 1], to: [1.65, 1], control: 'less', value: 65 },
  // Up by a half and down by a half: 1.5 × 0.5.
  { path: two, of: 'there-and-back', from: [0.9, 2], to: [0.75, 2], control: 'less', value: 50 },
  {
    path: 'plain/less-of-a-bad-thing',
    of: 'less-bars',
    from: [1.4, 1],
    to: [1.25, 1],
    control: 'less',
    value: 25,
  },
  {
    path: 'lessons/ruler-of-ratios',
    of: 'share-by-order',
    from: [10, 0],
    to: [10, 2],
    control: 'order',
    value: 3,
  },
  // The first tip stands at a quarter of the width, on the surface.
  {
    path: 'lessons/two-routes',
    of: 'two-wedges',
    from: ({ perUnit }) => [143 / perUnit - 0.3, 0.7],
    to: ({ perUnit }) => [143 / perUnit - 0.2, 0.6],
    control: 'baseline.angle',
    value: deg(0.2, 0.6),
  },
  {
    path: 'lessons/two-routes',
    of: 'two-routes',
    from: [14, 2],
    to: [20, 2],
    control: 'subject.angle',
    value: 20,
  },
  // The rim of 68 µm to that of 46.2 µm, the ninth grade.
  {
    path: five,
    of: 'grains',
    from: ({ circle: { cy, r } }) => [78 + r, cy],
    to: ({ circle: { cy, r } }) => [78 + (r * 46.2) / 68, cy],
    control: 'subject.grit',
    value: 8,
  },
  { path: five, of: 'grit-scales', from: [220, 68], to: [400, 35], control: 'subject.grit', value: 10 },
  // Five hundredths of 46.2 µm; and ten hundredths of 58.5 µm, the seventh grade.
  { path: five, of: 'scratch-depths', from: [3.4, 0], to: [2.31, 0], control: 'subject.grit', value: 8 },
  { path: five, of: 'scratch-depths', from: [1.53, 1], to: [5.85, 1], control: 'baseline.grit', value: 6 },
  // Last on its page: of another scale the grades are others too. A row below the other, four columns of 156 px: to the
  // third, JIS, at the height of the name.
  { path: five, of: 'grains', from: [78, 30], to: [390, 30], control: 'subject.scale', value: 2 },
  // Shoulders, each half of its thickness from the centre.
  {
    path: six,
    of: 'opened',
    from: ({ perUnit }) => [overlaidPx - 0.125 * perUnit, 0],
    to: ({ perUnit }) => [overlaidPx - 0.2 * perUnit, 0],
    control: 'subject.edge',
    value: 0.4,
  },
  // A flat grind 4 mm up: 0.6 + 2.4 · 4/14 mm, and 0.6 + 2.4 · 4/20 mm.
  {
    path: six,
    of: 'opened',
    from: ({ perUnit }) => [overlaidPx + 0.643 * perUnit, 4],
    to: ({ perUnit }) => [overlaidPx + 0.54 * perUnit, 4],
    control: 'baseline.grindHeight',
    value: 20,
  },
  {
    path: six,
    of: 'three-grinds',
    from: ({ perUnit }) => [320 - 0.125 * perUnit, 0],
    to: ({ perUnit }) => [320 - 0.2 * perUnit, 0],
    control: 'subject.edge',
    value: 0.4,
  },
  // The flat one of the three: 0.25 + 2.35 · 4/18 mm, and 0.25 + 2.35 · 4/12 mm.
  {
    path: six,
    of: 'three-grinds',
    from: ({ perUnit }) => [320 + 0.386 * perUnit, 4],
    to: ({ perUnit }) => [320 + 0.5167 * perUnit, 4],
    control: 'subject.grindHeight',
    value: 12,
  },
  {
    path: six,
    of: 'caliper-places',
    from: ({ perUnit }) => [478 / perUnit - 0.125, 0],
    to: ({ perUnit }) => [478 / perUnit - 0.2, 0],
    control: 'subject.edge',
    value: 0.4,
  },
  // The tip, straight below the middle of the shoulder.
  {
    path: six,
    of: 'caliper-places',
    from: ({ perUnit }) => [478 / perUnit, -0.125 / tan(14)],
    to: ({ perUnit }) => [478 / perUnit, -0.125 / tan(20)],
    control: 'subject.angle',
    value: 20,
  },
  // Either flank, and the side above.
  {
    path: six,
    of: 'four-times',
    from: ({ perUnit }) => [164 / perUnit - 0.1, 0.1 / tan(14)],
    to: ({ perUnit }) => [164 / perUnit - 0.1, 0.1 / tan(18)],
    control: 'subject.angle',
    value: 18,
  },
  {
    path: six,
    of: 'four-times',
    from: ({ perUnit }) => [476 / perUnit + 0.2, 0.2 / tan(24)],
    to: ({ perUnit }) => [476 / perUnit + 0.2, 0.2 / tan(20)],
    control: 'baseline.angle',
    value: 20,
  },
  {
    path: six,
    of: 'four-times',
    from: ({ perUnit }) => [164 / perUnit - 0.125, 0.8],
    to: ({ perUnit }) => [164 / perUnit - 0.2, 0.8],
    control: 'subject.edge',
    value: 0.4,
  },
  // The far end of the bar is that of quartz of 1280 HV.
  {
    path: 'lessons/steel-fairly',
    of: 'phase-bars',
    from: [1.8, 1],
    to: [1280 / 697, 1],
    control: 'subject.hrc',
    value: 60,
  },
  // The axis is of included angles.
  {
    path: 'lessons/steel-fairly',
    of: 'worth-by-angle',
    from: [28, 0.2],
    to: [40, 0.2],
    control: 'subject.angle',
    value: 20,
  },
  {
    path: 'lessons/stack-them',
    of: 'forces',
    from: [0.15, 1],
    to: [0.25, 1],
    control: 'subject.angle',
    table: [/^Dunlin/, 1, 25, 0.5],
  },
  // Sizes of P120 and P2000, 125 and 10.3 µm: the root of their ratio.
  {
    path: 'lessons/range-race',
    of: 'range-race',
    from: [1.5, 5],
    to: [Math.sqrt(125 / 10.3), 5],
    control: 'finishExponent',
    value: 0.5,
  },
  {
    path: 'lessons/range-race',
    of: 'range-race-linear',
    from: [2, 4],
    to: [Math.sqrt(125 / 10.3), 4],
    control: 'finishExponent',
    value: 0.5,
  },
  {
    path: 'lessons/range-race',
    of: 'draw-level',
    from: [24, 1],
    to: [15, 1],
    control: 'baseline.angle',
    value: 15,
  },
  {
    path: 'lessons/where-it-stops',
    of: 'three-limits',
    from: [14, 1],
    to: [10, 1],
    control: 'limits.angle',
    value: 10,
  },
];
