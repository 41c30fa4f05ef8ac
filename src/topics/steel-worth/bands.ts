import { createPredictor, memoizeByObject, nominal } from '../../model/index.ts';
import type { Comparison, Knife, Predictor } from '../../model/index.ts';
import { factorOf } from '../../comparison/found.ts';
import { pairOf } from '../../scene/pair.ts';
import type { Scene } from '../../scene/scene.ts';
import { ratiosAt } from '../../scene/sure.ts';
import { hardnessExponentOf, lifeExponentOf, takenAtDeg } from '../../scene/steel.ts';

/** A ratio and the central 90% of its samples. */
export interface Banded {
  low: number;
  high: number;
}

/** How far the worth of the steel can be off, and how much of that is each measure's own ±. */
export interface SteelBands {
  /** Everything: both ±, how far single steels lie off the published line, and how card turns into life. */
  all: Banded;
  hardness: Banded;
  carbide: Banded;
}

const samples = 2000;

/** One for each question, so that none takes from another what it has kept. */
const predictors: Partial<Record<keyof SteelBands, Predictor>> = {};
/** The knives with one edge on all of them, so that nothing but their steels can differ. */
function steelsAlone(
  comparison: Comparison,
  steel: (knife: Knife) => Pick<Knife, 'hrc' | 'carbideVolPercent'>,
): Comparison {
  return {
    ...comparison,
    friction: 0.25,
    knives: comparison.knives.map((knife) => ({
      id: knife.id,
      angleDeg: takenAtDeg / 2,
      edgeMm: 0.4,
      finish: { um: 15 },
      grind: { form: 'flat', spineMm: 3, heightMm: 16 },
      ...steel(knife),
    })),
  };
}

const middleVolumes = (volumes: Knife['carbideVolPercent']): Knife['carbideVolPercent'] =>
  Object.fromEntries(Object.entries(volumes).map(([kind, volume]) => [kind, nominal(volume)]));

/** The bands of the steel's worth, computed once for a scene. */
export const steelBandsOf = memoizeByObject((scene: Scene): SteelBands => {
  const pair = pairOf(scene);
  const band = (of: keyof SteelBands, comparison: Comparison): Banded => {
    const runs = (predictors[of] ??= createPredictor({ samples, seed: 7 }));
    const logs = runs.logRatios(comparison, scene.entry.subject);
    const [low = Number.NaN, high = Number.NaN] = ratiosAt(logs, [0.05, 0.95]);
    return { low, high };
  };
  // A measure's own ± leaves out what is not known of the line and of the way from card to life.
  const onTheLine: Comparison = {
    ...pair,
    assumptions: {
      ...pair.assumptions,
      residualCv: 0,
      lifeExponent: lifeExponentOf(scene),
      hardnessExponent: hardnessExponentOf(scene),
    },
  };
  const { careful } = scene.row;
  const over = ({ low, high }: Banded, by: number): Banded => ({ low: low / by, high: high / by });
  const bands: SteelBands = {
    all: band(
      'all',
      steelsAlone(pair, ({ hrc, carbideVolPercent }) => ({ hrc, carbideVolPercent })),
    ),
    hardness: over(
      band(
        'hardness',
        steelsAlone(onTheLine, ({ hrc, carbideVolPercent }) => ({
          hrc,
          carbideVolPercent: middleVolumes(carbideVolPercent),
        })),
      ),
      factorOf(careful, 'carbide'),
    ),
    carbide: over(
      band(
        'carbide',
        steelsAlone(onTheLine, ({ hrc, carbideVolPercent }) => ({ hrc: nominal(hrc), carbideVolPercent })),
      ),
      factorOf(careful, 'hardness'),
    ),
  };
  return bands;
});
