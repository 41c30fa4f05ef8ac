import { readNumber } from '../comparison/read.ts';
import { readCycles, readSeries } from '../runs/csv-row.ts';
import { notRecorded, validateRun } from '../runs/log.ts';
import type { NamedRun } from '../runs/log.ts';

/** The fields in which one run is typed. Empty is not recorded. */
export const runFields = [
  { name: 'knife', kind: 'choice', label: 'Knife' },
  {
    name: 'reach',
    kind: 'text',
    label: 'Until the end point',
    hint: 'How many cuts, or how many mm were cut. Empty where the readings or cycles below say it.',
  },
  {
    name: 'unit',
    kind: 'choice',
    label: 'Counted in',
    choices: [
      ['cuts', 'cuts'],
      ['mm', 'mm cut'],
    ],
  },
  {
    name: 'ended',
    kind: 'choice',
    label: 'Did it reach the end point?',
    choices: [
      ['yes', 'yes'],
      ['early', 'no, it was ended early'],
    ],
  },
  { name: 'batch', kind: 'text', label: 'Batch of material', hint: 'Coil, roll, sheet or delivery.' },
  {
    name: 'sharpening',
    kind: 'text',
    label: 'Sharpening',
    hint: 'Its number or date: however often one edge is cut, it counts once.',
  },
  {
    name: 'checkedEvery',
    kind: 'text',
    label: 'Looked at the end point every',
    hint: 'In the same unit; the true end lies within the last stretch.',
  },
  { name: 'endPoint', kind: 'text', label: 'What ended it', hint: 'The sign that counts as blunt.' },
  { name: 'startSharpness', kind: 'text', label: 'Sharpness at the start' },
  { name: 'angleDeg', kind: 'text', label: 'Angle per side as sharpened', hint: 'Degrees.' },
  {
    name: 'burrChecked',
    kind: 'choice',
    label: 'Burr checked?',
    choices: [
      [notRecorded, 'not recorded'],
      ['yes', 'yes'],
      ['no', 'no'],
    ],
  },
  { name: 'judge', kind: 'text', label: 'Judged by', hint: 'Initials are enough.' },
  { name: 'order', kind: 'text', label: 'Place in the order of work', hint: 'The number on the sheet.' },
  { name: 'date', kind: 'text', label: 'Date', hint: 'Year, month, day: 2026-11-25.' },
  { name: 'remarks', kind: 'text', label: 'Remarks' },
  {
    name: 'leftOutBecause',
    kind: 'text',
    label: 'Left out because',
    hint: 'Only where the run must not count: say why. It stays in the log.',
  },
  {
    name: 'series',
    kind: 'text',
    label: 'Readings along the way',
    hint: 'Cut@reading, a space between: 0@100 50@92 120@81. Sharpness falls; the force of a cut, which rises, will do as well.',
  },
  {
    name: 'cycles',
    kind: 'text',
    label: 'Cut in each cycle of a card test, mm',
    hint: 'In order, a space between: 11.2 10.8 10.1.',
  },
] as const;

export type RunFieldName = (typeof runFields)[number]['name'];
export type RunTexts = Record<RunFieldName, string>;

export type ReadRun =
  { ok: true; run: NamedRun } | { ok: false; problems: { field: RunFieldName; message: string }[] };

const numbers = {
  reach: 'the cuts or mm',
  checkedEvery: 'looked every',
  startSharpness: 'the sharpness',
  angleDeg: 'the angle',
  order: 'the order',
} as const satisfies Partial<Record<RunFieldName, string>>;

/** A path of the log's own check as the field it stands in. */
const fieldOf = (path: string): RunFieldName =>
  runFields.find(({ name }) => name === path.split('.')[0])?.name ??
  (path === 'censored' ? 'ended' : 'reach');

/** How far the last reading stands, where it is one. */
function lastCut(series: ReturnType<typeof readSeries> | undefined): number | undefined {
  const last = series?.at(-1);
  return typeof last === 'object' && typeof last.cut === 'number' ? last.cut : undefined;
}

/** Readings and depths as a cell of a file holds them; a comma in them is a decimal sign. */
function alongTheWay({ series, cycles }: RunTexts) {
  const read = <T>(text: string, reader: (cell: string, decimal: 'comma' | 'point') => T): T | undefined =>
    text.trim() === '' ? undefined : reader(text.trim(), text.includes(',') ? 'comma' : 'point');
  return { series: read(series, readSeries), cycles: read(cycles, readCycles) };
}

/** Only what was filled in. */
const withoutEmpty = (fields: Record<string, string | number | undefined>) =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== '' && value !== undefined));

/** The typed texts as a run, or what is wrong in which field. */
export function readRun(texts: RunTexts): ReadRun {
  const problems: { field: RunFieldName; message: string }[] = [];
  const number = (field: keyof typeof numbers): number | undefined => {
    if (texts[field].trim() === '') return undefined;
    const read = readNumber(texts[field], {
      what: numbers[field],
      low: 0,
      high: 1e9,
      ...(field === 'angleDeg' ? { unit: '°' as const } : {}),
    });
    if (read.ok) return read.value;
    problems.push({ field, message: read.message });
    return undefined;
  };
  const words = (field: RunFieldName): string => texts[field].trim() || notRecorded;
  const { series, cycles } = alongTheWay(texts);
  // Where it is left empty the readings or cycles say how far it went.
  const reach = number('reach') ?? (texts.unit === 'cuts' ? lastCut(series) : undefined);
  if (texts.reach.trim() === '' && !series && !cycles)
    problems.push({ field: 'reach', message: 'How far did it go? Type a number.' });
  if (texts.knife === '') problems.push({ field: 'knife', message: 'Choose the knife.' });
  const own = reach === undefined ? {} : texts.unit === 'mm' ? { cutMm: reach } : { cuts: reach };
  const run = {
    knife: texts.knife,
    batch: words('batch'),
    sharpening: words('sharpening'),
    ...(series ? { series } : {}),
    ...(cycles ? { cycles } : {}),
    ...own,
    endPoint: words('endPoint'),
    checkedEvery: number('checkedEvery') ?? notRecorded,
    startSharpness: number('startSharpness') ?? notRecorded,
    angleDeg: number('angleDeg') ?? notRecorded,
    burrChecked: texts.burrChecked === 'yes' ? true : texts.burrChecked === 'no' ? false : notRecorded,
    judge: words('judge'),
    ...(texts.ended === 'early' ? { censored: true } : {}),
    ...withoutEmpty({
      order: number('order'),
      date: texts.date.trim(),
      remarks: texts.remarks.trim(),
      leftOutBecause: texts.leftOutBecause.trim(),
    }),
  };
  if (problems.length > 0) return { ok: false, problems };
  const checked = validateRun(run);
  return checked.ok
    ? checked
    : {
        ok: false,
        problems: checked.problems.map(({ path, message }) => ({ field: fieldOf(path), message })),
      };
}

const shown = (value: string | number): string => (value === notRecorded ? '' : String(value));

/** A run as the fields show it; `readRun` reads it back. */
export function showRun(run: NamedRun): RunTexts {
  const { cuts, cutMm } = run;
  return {
    knife: run.knife,
    reach: String(cuts ?? cutMm ?? ''),
    unit: cuts === undefined ? 'mm' : 'cuts',
    ended: run.censored ? 'early' : 'yes',
    batch: shown(run.batch),
    sharpening: shown(run.sharpening),
    checkedEvery: shown(run.checkedEvery),
    endPoint: shown(run.endPoint),
    startSharpness: shown(run.startSharpness),
    angleDeg: shown(run.angleDeg),
    burrChecked: run.burrChecked === notRecorded ? notRecorded : run.burrChecked ? 'yes' : 'no',
    judge: shown(run.judge),
    series: run.series?.map(({ cut, sharpness }) => `${cut}@${sharpness}`).join(' ') ?? '',
    cycles: run.cycles?.join(' ') ?? '',
    order: String(run.order ?? ''),
    date: run.date ?? '',
    remarks: run.remarks ?? '',
    leftOutBecause: run.leftOutBecause ?? '',
  };
}
