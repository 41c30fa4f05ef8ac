import type { Context } from './context.ts';

export const tides: Context = {
  id: 'tides',
  place: 'On a coast (all numbers invented)',
  names: ['the north bay', 'the south bay', 'the east bay', 'the west bay'],
  causes: ['its narrowing', 'its shelving', 'its length', 'its mouth'],
  yields: 'tide',
  less: 'less',
  asks: 'times as high',
  timesAs: (subject, baseline) => `how many times as high is the tide in ${subject} as in ${baseline}?`,
  isTimes: (subject, baseline, times) => `the tide in ${subject} is ${times} as high as in ${baseline}`,
  perCentMore: (subject, baseline, more = 'more') =>
    `what percentage ${more} tide is there in ${subject} than in ${baseline}?`,
  isMore: (subject, baseline, more) => `there is ${more} tide in ${subject} than in ${baseline}`,
  output: (name) => `the tide in ${name}`,
  amount: {
    unit: 'cm',
    continuous: true,
    is: (name, amount) => `the tide in ${name} is ${amount} cm`,
    asked: (name) => `how many centimetres is the tide in ${name}?`,
  },
  hindrance: {
    name: 'area over which the water spreads',
    unit: 'km²',
    amounts: [20, 40, 60, 80],
    output: 'how high the same inflow raises a bay',
  },
  done: { name: 'the basin', causes: ['narrowing', 'shelving', 'length'] },
  given: { name: 'the mouth', causes: ['depth', 'width'] },
  whole: {
    of: (name) => `all the water that enters ${name}`,
    parts: ['enters in the first hour', 'enters in the second hour', 'enters in the third hour'],
  },
  share: (name) => `the share of days without fog in ${name}`,
  beside: {
    start: 'the height that the moon raises',
    all: 'height of the water',
    helpers: ['The sun', 'The wind', 'Low air pressure'],
  },
  trials: {
    what: 'bays',
    variables: [
      { name: 'the length', states: ['2 km long', '4 km long', '8 km long'] },
      { name: 'the mouth', states: ['mouth 200 m', 'mouth 400 m', 'mouth 600 m'] },
      { name: 'the depth', states: ['6 m deep', '10 m deep', '16 m deep'] },
      { name: 'the moon', states: ['new moon', 'half moon', 'full moon'] },
    ],
  },
};
