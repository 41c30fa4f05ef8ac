import type { Context } from './context.ts';

export const seedTrays: Context = {
  id: 'seed-trays',
  place: 'In a nursery (all numbers invented)',
  names: ['the east bench', 'the west bench', 'the north bench', 'the south bench'],
  causes: ['its light', 'its warmth', 'its soil', 'its watering'],
  yields: 'seedlings',
  less: 'fewer',
  asks: 'times as many',
  timesAs: (subject, baseline) => `how many times as many seedlings does ${subject} raise as ${baseline}?`,
  isTimes: (subject, baseline, times) => `${subject} raises ${times} as many seedlings as ${baseline}`,
  perCentMore: (subject, baseline, more = 'more') =>
    `what percentage ${more} seedlings does ${subject} raise than ${baseline}?`,
  isMore: (subject, baseline, more) => `${subject} raises ${more} seedlings than ${baseline}`,
  output: (name) => `the number of seedlings on ${name}`,
  amount: {
    unit: 'seedlings',
    continuous: false,
    is: (name, amount) => `${name} raises ${amount} seedlings`,
    asked: (name) => `how many seedlings does ${name} raise?`,
  },
  hindrance: {
    name: 'room for each seed',
    unit: 'cm²',
    amounts: [20, 40, 60, 80],
    output: 'how many seedlings a bench raises',
  },
  done: { name: 'care', causes: ['light', 'warmth', 'watering'] },
  given: { name: 'seed', causes: ['age', 'ripeness'] },
  whole: {
    of: (name) => `all the seedlings on ${name}`,
    parts: ['are beans', 'are peas', 'are leeks'],
  },
  share: (name) => `the share of seeds that come up on ${name}`,
  beside: {
    start: 'the number in the first tray',
    all: 'seedlings',
    helpers: ['A second tray', 'A third tray', 'A fourth tray'],
  },
  trials: {
    what: 'trays',
    variables: [
      { name: 'the light', states: ['4 hours of light', '8 hours of light', '12 hours of light'] },
      { name: 'the warmth', states: ['12 °C', '16 °C', '20 °C'] },
      { name: 'the soil', states: ['sand', 'loam', 'peat'] },
      { name: 'the watering', states: ['watered daily', 'watered twice a week', 'watered weekly'] },
    ],
  },
};
