/** How the values of a knife's fields stand in a link. */
import type { CarbideVolPercent, Finish, Grind, GrindForm, GritScale, Quantity } from '../../model/index.ts';
import type { AngleEntry, CarbideEntry, Placed } from '../knife-values.ts';
import { listOf, nameOf, wholePacking } from './packed.ts';
import type { Packing } from './packed.ts';

const shape = nameOf(['uniform', 'triangular', 'normal']);
/** Stands where the number of a shape would: the two numbers before it are the ends of a range. */
const notKnown = 9;

export const quantityPacking: Packing<Quantity> = {
  pack(quantity) {
    if (typeof quantity === 'number') return quantity;
    if ('unknown' in quantity) return [quantity.low, quantity.high, notKnown];
    const pair = [quantity.value, quantity.plusMinus];
    return quantity.shape === undefined ? pair : [...pair, shape.pack(quantity.shape)];
  },
  unpack(packed) {
    if (!Array.isArray(packed)) return packed;
    const [first, second, kind = null] = listOf(packed);
    if (kind === notKnown) return { unknown: true, low: first, high: second };
    return { value: first, plusMinus: second, ...(kind === null ? {} : { shape: shape.unpack(kind) }) };
  },
};

/** Readings along the edge are a list within a list. */
export const placedPacking: Packing<Placed> = {
  pack: (value) =>
    typeof value === 'object' && 'heel' in value
      ? [[value.heel, value.middle, value.tip]]
      : quantityPacking.pack(value),
  unpack(packed) {
    const [along] = listOf(packed);
    if (!Array.isArray(along)) return quantityPacking.unpack(packed);
    const [heel, middle, tip] = listOf(along);
    return { heel, middle, tip };
  },
};

const angleWays = { typed: 0, slantWidth: 1, height: 2 } as const;

/** What stands before the angle says in which of three ways it was found. */
export const anglePacking: Packing<AngleEntry> = {
  pack(angle) {
    if ('deg' in angle)
      return [angleWays.typed, placedPacking.pack(angle.deg), ...(angle.perSide ? [1] : [])];
    const [way, side] =
      'slantWidthMm' in angle
        ? [angleWays.slantWidth, angle.slantWidthMm]
        : [angleWays.height, angle.heightMm];
    const plusMinus = angle.plusMinus === undefined ? [] : [angle.plusMinus];
    return [way, quantityPacking.pack(angle.bevelMm), quantityPacking.pack(side), ...plusMinus];
  },
  unpack(packed) {
    const [way, first, second, third = null] = listOf(packed);
    if (way === angleWays.typed)
      return {
        deg: placedPacking.unpack(first),
        ...((second ?? null) === null ? {} : { perSide: second === 1 }),
      };
    const side = way === angleWays.slantWidth ? 'slantWidthMm' : 'heightMm';
    return {
      bevelMm: quantityPacking.unpack(first),
      [side]: quantityPacking.unpack(second),
      ...(third === null ? {} : { plusMinus: third }),
    };
  },
};

const scale = nameOf<GritScale>(['FEPA-P', 'FEPA-F', 'JIS', 'CAMI']);

/** A particle size stands alone; a grit stands after its scale. */
export const finishPacking: Packing<Finish> = {
  pack: (finish) =>
    'um' in finish ? [quantityPacking.pack(finish.um)] : [scale.pack(finish.scale), finish.grit],
  unpack(packed) {
    const items = listOf(packed);
    return items.length === 1
      ? { um: quantityPacking.unpack(items[0]) }
      : { scale: scale.unpack(items[0]), grit: items[1] };
  },
};

export const grindPacking: Packing<Grind> = wholePacking<Grind>({
  form: { position: 0, ...nameOf<GrindForm>(['flat', 'hollow', 'convex']) },
  spineMm: { position: 1, ...quantityPacking },
  heightMm: { position: 2, ...quantityPacking },
  radiusMm: { position: 3, optional: true, ...quantityPacking },
});

const volume = (position: number) => ({ position, optional: true, ...quantityPacking }) as const;
const volumes = wholePacking<CarbideVolPercent>({
  Fe3C: volume(0),
  CrC: volume(1),
  CrVC: volume(2),
  MC: volume(3),
  M6C: volume(4),
  MN: volume(5),
  CrN: volume(6),
});

/** A designation is text; volumes are a list. */
export const carbidePacking: Packing<CarbideEntry> = {
  pack: (carbide) => ('designation' in carbide ? carbide.designation : volumes.pack(carbide.volPercent)),
  unpack: (packed) =>
    typeof packed === 'string' ? { designation: packed } : { volPercent: volumes.unpack(packed) },
};
