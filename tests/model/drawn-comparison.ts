import { drawName } from '../../src/model/uncertainty/drawn.ts';
import { isUnknown } from '../../src/model/quantities.ts';
import type { Run } from '../../src/model/uncertainty/sampled-run.ts';
import type { CarbideKind, Knife, Comparison, Quantity } from '../../src/model/types.ts';
import { at } from '../../src/model/chain/values.ts';

/** The comparison of one sample of a run, every value exact: what `compare` can compute with. */
export function drawnComparison(comparison: Comparison, run: Run, sample: number): Comparison {
  const all = new Map(run.inputs.map((input, j) => [drawName(input), run.drawn[j]?.values ?? 0]));
  const value = (knife: string | null, name: string): number =>
    at(all.get(drawName({ knife, name })) ?? 0, sample);
  const knifeOf = (knife: Knife): Knife => {
    const measured = (name: string, quantity: Quantity, gauge: string): number =>
      value(knife.id, name) + (isUnknown(quantity) ? 0 : value(null, `gauge.${gauge}`));
    return {
      ...knife,
      angleDeg: measured('angleDeg', knife.angleDeg, 'angleDeg'),
      ...(knife.microbevelAngleDeg === undefined
        ? {}
        : {
            microbevelAngleDeg: measured('microbevelAngleDeg', knife.microbevelAngleDeg, 'angleDeg'),
          }),
      edgeMm: measured('edgeMm', knife.edgeMm, 'edgeMm'),
      grind: {
        form: knife.grind.form,
        spineMm: value(knife.id, 'spineMm'),
        heightMm: value(knife.id, 'heightMm'),
        ...(knife.grind.form === 'flat' ? {} : { radiusMm: value(knife.id, 'radiusMm') }),
      },
      finish: 'um' in knife.finish ? { um: value(knife.id, 'finish') } : knife.finish,
      hrc: measured('hrc', knife.hrc, 'hrc'),
      carbideVolPercent: Object.fromEntries(
        (Object.keys(knife.carbideVolPercent) as CarbideKind[]).map((kind) => [
          kind,
          value(knife.id, `carbideVolPercent.${kind}`),
        ]),
      ),
    };
  };
  return {
    ...comparison,
    knives: comparison.knives.map(knifeOf),
    friction: value(null, 'friction'),
    contactDepthMm: value(null, 'contactDepthMm'),
    assumptions: {
      angleExponent: value(null, 'angleExponent'),
      thicknessExponent: value(null, 'thicknessExponent'),
      finishExponent: value(null, 'finishExponent'),
      hardnessExponent: value(null, 'hardnessExponent'),
      lifeExponent: value(null, 'lifeExponent'),
      wedgingShare: value(null, 'wedgingShare'),
      limitPower: value(null, 'limitPower'),
    },
  };
}
