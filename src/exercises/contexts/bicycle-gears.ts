import type { Context } from './context.ts';

export const bicycleGears: Context = {
  id: 'bicycle-gears',
  place: 'In a cycling club where all pedal at one pace (all numbers invented)',
  names: ['the red bicycle', 'the blue bicycle', 'the green bicycle', 'the white bicycle'],
  causes: ['its chainring', 'its sprocket', 'its hub gear', 'its wheel'],
  yields: 'distance',
  less: 'less',
  asks: 'times as far',
  timesAs: (subject, baseline) => `how many times as far does ${subject} go as ${baseline}?`,
  isTimes: (subject, baseline, times) => `${subject} goes ${times} as far as ${baseline}`,
  perCentMore: (subject, baseline, more = 'more') =>
    `what percentage ${more} distance does ${subject} cover than ${baseline}?`,
  isMore: (subject, baseline, more) => `${subject} covers ${more} distance than ${baseline}`,
  output: (name) => `the distance that ${name} goes`,
  amount: {
    unit: 'm',
    continuous: true,
    is: (name, amount) => `${name} goes ${amount} m in a minute`,
    asked: (name) => `how many metres does ${name} go in a minute?`,
  },
  hindrance: {
    name: 'number of teeth of the sprocket',
    unit: 'teeth',
    amounts: [20, 40],
    output: 'how far a bicycle goes',
  },
  done: { name: 'gearing', causes: ['the chainring', 'the sprocket', 'the hub gear'] },
  given: { name: 'wheels', causes: ['rim', 'tyre'] },
  whole: {
    of: (name) => `the whole tour of ${name}`,
    parts: ['is ridden on Friday', 'is ridden on Saturday', 'is ridden on Sunday'],
  },
  share: (name) => `the share of rides without a repair on ${name}`,
  beside: {
    start: 'the length of the first day’s ride',
    all: 'road ridden',
    helpers: ['The second day', 'The third day', 'The fourth day'],
  },
  trials: {
    what: 'rides',
    variables: [
      { name: 'the chainring', states: ['chainring 34', 'chainring 42', 'chainring 50'] },
      { name: 'the sprocket', states: ['sprocket 14', 'sprocket 18', 'sprocket 24'] },
      { name: 'the wheel', states: ['wheel 50 cm', 'wheel 60 cm', 'wheel 70 cm'] },
      { name: 'the road', states: ['level road', 'gentle hill', 'steep hill'] },
    ],
  },
};
