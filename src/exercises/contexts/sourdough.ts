import type { Context } from './context.ts';

export const sourdough: Context = {
  id: 'sourdough',
  place: 'In a bakery (all numbers invented)',
  names: ['the rye dough', 'the wheat dough', 'the spelt dough', 'the oat dough'],
  causes: ['its warmth', 'its starter', 'its flour', 'its water'],
  yields: 'rise',
  less: 'less',
  asks: 'times as much',
  timesAs: (subject, baseline) => `how many times as much does ${subject} rise as ${baseline}?`,
  isTimes: (subject, baseline, times) => `${subject} rises ${times} as much as ${baseline}`,
  perCentMore: (subject, baseline, more = 'more') =>
    `what percentage ${more} does ${subject} rise than ${baseline}?`,
  isMore: (subject, baseline, more) => `${subject} rises ${more} than ${baseline}`,
  output: (name) => `the volume of ${name}`,
  amount: {
    unit: 'ml',
    continuous: true,
    is: (name, amount) => `${name} rises by ${amount} ml`,
    asked: (name) => `by how many millilitres does ${name} rise?`,
  },
  hindrance: {
    name: 'floor area of the tin',
    unit: 'cm²',
    amounts: [100, 200, 300, 400],
    output: 'how high the same rise of dough stands in a tin',
  },
  done: { name: 'handling', causes: ['warmth', 'kneading', 'resting'] },
  given: { name: 'flour', causes: ['freshness', 'strength'] },
  whole: {
    of: (name) => `the whole weight of ${name}`,
    parts: ['is white flour', 'is brown flour', 'is starter'],
  },
  share: (name) => `the share of good loaves from ${name}`,
  beside: {
    start: 'the weight in the first bowl',
    all: 'dough',
    helpers: ['A second bowl', 'A third bowl', 'A fourth bowl'],
  },
  trials: {
    what: 'doughs',
    variables: [
      { name: 'the warmth', states: ['18 °C', '22 °C', '26 °C'] },
      { name: 'the flour', states: ['rye', 'wheat', 'spelt'] },
      { name: 'the starter', states: ['a day old', 'two days old', 'four days old'] },
      { name: 'the resting', states: ['4 hours of rest', '8 hours of rest', '12 hours of rest'] },
    ],
  },
};
