/** What may stand in the fields of a knife that hold more than one number. */
import * as v from 'valibot';
import type { Finish, Grind } from '../model/index.ts';
import type { AngleEntry, CarbideEntry } from './knife-values.ts';
import { number, oneOf, placed, quantity, words } from './schema-parts.ts';

const plusMinusMm = v.exactOptional(number('the ± of a caliper reading', ' mm', 0, 2));
const bevelMm = quantity('the thickness at the shoulder of the bevel', ' mm', 0.01, 10);

export const angleSchema: v.GenericSchema<AngleEntry> = v.union(
  [
    v.strictObject({
      deg: placed('edge angle', '°', 4, 45, ' per side'),
      perSide: v.exactOptional(v.literal(true)),
    }),
    v.strictObject({
      bevelMm,
      slantWidthMm: quantity('the width of the bevel', ' mm', 0.01, 30),
      plusMinus: plusMinusMm,
    }),
    v.strictObject({
      bevelMm,
      heightMm: quantity('the height of the bevel', ' mm', 0.01, 30),
      plusMinus: plusMinusMm,
    }),
  ],
  'the edge angle must be degrees per side (deg), or the thickness at the shoulder (bevelMm) with the width (slantWidthMm) or the height (heightMm) of the bevel',
);

export const finishSchema: v.GenericSchema<Finish> = v.union(
  [
    v.strictObject({
      scale: oneOf('the grit scale', ['FEPA-P', 'FEPA-F', 'JIS', 'CAMI']),
      grit: number('grit', '', 80, 8000),
    }),
    v.strictObject({ um: quantity('median particle size', ' µm', 0.1, 250) }),
  ],
  'the finish must be a grit with its scale, or a median particle size in µm (um)',
);

export const grindSchema: v.GenericSchema<Grind> = v.strictObject({
  form: oneOf('the grind', ['flat', 'hollow', 'convex']),
  spineMm: quantity('thickness at the spine', ' mm', 0.1, 20),
  heightMm: quantity('height of the grind', ' mm', 0.5, 150),
  radiusMm: v.exactOptional(quantity('radius of the grind', ' mm', 1, 10000)),
});

const volume = v.exactOptional(quantity('carbide', ' vol %', 0, 40));

export const carbideSchema: v.GenericSchema<CarbideEntry> = v.union(
  [
    v.strictObject({
      volPercent: v.strictObject({
        Fe3C: volume,
        CrC: volume,
        CrVC: volume,
        MC: volume,
        M6C: volume,
        MN: volume,
        CrN: volume,
      }),
    }),
    v.strictObject({ designation: words('the designation', 24) }),
  ],
  'the carbide must be volume per cent by kind (volPercent), or a standard designation',
);
