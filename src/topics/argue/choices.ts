import { disputes } from '../../model/index.ts';
import type { Dispute, Position } from '../../model/index.ts';
import type { Choice } from '../choice.ts';

const legends: Record<Dispute, string> = {
  apex: 'What a lower angle does at the apex',
  push: 'How the wedge meets the material',
  structure: 'How the effects combine',
  floor: 'Where an edge stops standing',
};

const labels: { [D in Dispute]: Record<(typeof disputes)[D][number], string> } = {
  apex: {
    between: 'Something between one route and two, near the published line',
    tooth: 'Deeper teeth, in full',
    wear: 'More steel to wear away, in full',
  },
  push: {
    spread: 'The material parts at one spread force',
    bed: 'The edge sinks equally deep into an elastic bed',
    buried: 'The bevel is buried to equal thickness',
  },
  structure: {
    multiplied: 'All factors multiply',
    added: 'The forces of wedge, thickness and grind add',
    toLimit: 'The force has a limit',
  },
  floor: { moving: 'Lower for harder steel', still: 'At 5° per side for every steel' },
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
      // The first form of each is not a position of one's own.
      const next: Position = value === own ? others : { ...others, [dispute]: value };
      return Object.keys(next).length === 0 ? rest : { ...rest, position: next };
    },
  };
};

/** The switches of the disputed assumptions. */
export const argueChoices: Record<string, Choice> = {
  apex: choice('apex'),
  push: choice('push'),
  structure: choice('structure'),
  floor: choice('floor'),
};
