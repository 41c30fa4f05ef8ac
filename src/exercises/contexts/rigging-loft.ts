import type { Context } from './context.ts';

export const riggingLoft: Context = {
  id: 'rigging-loft',
  place: 'In the rigging loft (all numbers invented)',
  names: ['Dunlin', 'Plover', 'Curlew', 'Avocet'],
  causes: ['its edge angle', 'its finish', 'its thickness behind the edge', 'its steel'],
  yields: 'rope',
  less: 'less',
  asks: 'times as long',
  timesAs: (subject, baseline) => `how many times as long does ${subject} cut as ${baseline}?`,
  isTimes: (subject, baseline, times) => `${subject} cuts ${times} as long as ${baseline}`,
  perCentMore: (subject, baseline, more = 'more') =>
    `what percentage ${more} rope does ${subject} cut than ${baseline}?`,
  isMore: (subject, baseline, more) => `${subject} cuts ${more} rope than ${baseline}`,
  output: (name) => `the rope that ${name} cuts in a shift`,
  amount: {
    unit: 'm',
    continuous: true,
    is: (name, amount) => `${name} cuts ${amount} m of rope in a shift`,
    asked: (name) => `how many metres of rope does ${name} cut in a shift?`,
  },
  hindrance: {
    name: 'thickness behind the edge',
    unit: 'mm',
    amounts: [0.2, 0.3, 0.4, 0.5, 0.6, 0.8],
    output: 'how long a knife cuts',
  },
  done: { name: 'geometry', causes: ['the wedge', 'the apex', 'the thickness behind the edge'] },
  given: { name: 'steel', causes: ['hardness', 'carbide'] },
  whole: {
    of: (name) => `all the rope ${name} cuts in a week`,
    parts: ['is cut on Monday', 'is cut on Tuesday', 'is cut on Friday'],
  },
  share: (name) => `the share of clean ends with ${name}`,
  beside: {
    start: 'the force of the hand',
    all: 'force on the rope',
    helpers: ['A weight', 'A spring', 'A second hand'],
  },
  trials: {
    what: 'knives',
    variables: [
      { name: 'the edge angle', states: ['14° per side', '18° per side', '24° per side'] },
      { name: 'the finish', states: ['P220', 'P600', 'P1200'] },
      { name: 'the thickness behind the edge', states: ['0.25 mm', '0.40 mm', '0.60 mm'] },
      { name: 'the hardness', states: ['56 HRC', '60 HRC', '64 HRC'] },
    ],
  },
};
