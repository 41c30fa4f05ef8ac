/** What a knife is called, and what happened to its edge. */
import type { KnifeEntry } from '../comparison/entry.ts';
import { bad, good } from './field.ts';
import type { Field } from './field.ts';

export const nameFields = {
  name: {
    kind: 'text',
    label: 'Name',
    show: ({ name }) => name,
    write: (knife, text) =>
      text.trim() === ''
        ? bad('Give the knife a name, so that the sentences can speak of it.')
        : good({ ...knife, name: text.trim() }),
  },
} satisfies Record<string, Field>;

export const stateFields = {
  state: {
    kind: 'choice',
    label: 'The edge is',
    choices: [
      ['as bought', 'as bought'],
      ['resharpened', 'resharpened'],
      ['modified', 'modified'],
      ['not recorded', 'not recorded'],
    ],
    show: ({ state }) => state,
    write: (knife, text) => good({ ...knife, state: text as KnifeEntry['state'] }),
  },
} satisfies Record<string, Field>;
