import { disputes } from '../../model/index.ts';
import type { Dispute, Position } from '../../model/index.ts';
import type { Choice } from '../choice.ts';

const legends: Record<Dispute, string> = {
  apex: 'What a lower angle does at the apex',
  push: 'How the wedge meets the stock',
  forces: 'What wedge, thickness and grind do together',
  floor: 'Where an edge stops standing',
};

const labels: { [D in Dispute]: Record<(typeof disputes)[D][number], string> } = {
  apex: {
    between: 'Something between one route and two, calibrated on the published test',
    tooth: 'Deeper teeth, in full',
    wear: 'More steel to wear away, in full',
  },
  push: {
    spread: 'The stock parts at one spread force',
    bed: 'The edge sinks equally deep into an elastic bed',
    buried: 'The bevel is buried to equal thickness',
  },
  forces: { multiply: 'They multiply', add: 'Their forces add' },
  floor: { moving: 'Lower for harder steel (tan² law)', still: 'At 5° per side for every steel' },
};

const choice = (dispute: Dispute): Choice => {
  const [own] = disputes[dispute];
  return {
    legend: legends[dispute],
    options: Object.entries(labels[dispute]).map(([value, label]) => ({ value, label })),
    read: ({ position }) => position?.[dispute] ?? own,
    write: (entry, value) => {
      const { position, ...rest } = entry;
      const { [dispute]: _before, ...others } = position ?? {};
      // The careful estimate's own form is not a position of one's own.
      const next: Position = value === own ? others : { ...others, [dispute]: value };
      return Object.keys(next).length === 0 ? rest : { ...rest, position: next };
    },
  };
};

/** The switches of the disputed assumptions. */
export const argueChoices: Record<string, Choice> = {
  apex: choice('apex'),
  push: choice('push'),
  forces: choice('forces'),
  floor: choice('floor'),
};
