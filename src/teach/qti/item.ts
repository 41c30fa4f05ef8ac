import { modeOf } from '../../exercises/index.ts';
import type { ProblemSet } from '../../exercises/set/index.ts';
import { escaped } from '../check/html.ts';
import { kindNames } from '../set/names.ts';
import { tag, xmlFile } from '../set/xml.ts';
import { asAsked } from '../set/as-asked.ts';
import { ASI, ASI_SCHEMA } from './namespaces.ts';

type Item = ProblemSet['items'][number];

/** The name of an item within its package. */
export const itemId = ({ number }: Item): string => `problem-${String(number).padStart(2, '0')}`;

/**
 * A problem as an assessment item of QTI 3.0: a number or a letter is entered, a right one scores 1, and a known wrong
 * idea is answered with what is behind it.
 */
export function itemXml(item: Item): string {
  const { problem } = item;
  const choice = modeOf(problem.unit) === 'letter';
  const idea = problem.missteps.map((misstep, index) => ({ ...misstep, id: `misstep-${index + 1}` }));
  const cases = [
    { equals: matches(item, problem.answer), sets: set('SCORE', 'float', '1') },
    ...idea.map(({ answer, id }) => ({
      equals: matches(item, answer),
      sets: set('FEEDBACK', 'identifier', id),
    })),
  ];
  return xmlFile(
    tag(
      'qti-assessment-item',
      {
        xmlns: ASI,
        'xmlns:xsi': 'http://www.w3.org/2001/XMLSchema-instance',
        'xsi:schemaLocation': `${ASI} ${ASI_SCHEMA}`,
        identifier: itemId(item),
        title: `${item.number}. ${kindNames[problem.kind]}`,
        adaptive: 'false',
        'time-dependent': 'false',
        'xml:lang': 'en',
      },
      [
        tag(
          'qti-response-declaration',
          { identifier: 'RESPONSE', cardinality: 'single', 'base-type': choice ? 'identifier' : 'float' },
          tag('qti-correct-response', {}, tag('qti-value', {}, entered(item, problem.answer))),
        ),
        outcome('SCORE', 'float', '0'),
        outcome('MAXSCORE', 'float', '1'),
        outcome('FEEDBACK', 'identifier'),
        tag('qti-item-body', {}, choice ? choiceBody(item) : numberBody(item)),
        tag('qti-response-processing', {}, tag('qti-response-condition', {}, cases.map(branch).join(''))),
        ...idea.map(({ id, idea: says }) =>
          tag(
            'qti-modal-feedback',
            { 'outcome-identifier': 'FEEDBACK', identifier: id, 'show-hide': 'show' },
            tag('qti-content-body', {}, tag('p', {}, escaped(says))),
          ),
        ),
      ].join('\n'),
    ),
  );
}

const letterOf = (place: number): string => 'ABCDEFGH'.charAt(place - 1);

const entered = ({ problem }: Item, answer: number): string =>
  modeOf(problem.unit) === 'letter' ? letterOf(answer) : String(asAsked(problem, answer).value);

const outcome = (identifier: string, type: string, value?: string): string =>
  tag(
    'qti-outcome-declaration',
    { identifier, cardinality: 'single', 'base-type': type },
    value === undefined ? '' : tag('qti-default-value', {}, tag('qti-value', {}, value)),
  );

const set = (identifier: string, type: string, value: string): string =>
  tag('qti-set-outcome-value', { identifier }, tag('qti-base-value', { 'base-type': type }, value));

const RESPONSE = tag('qti-variable', { identifier: 'RESPONSE' });

function matches({ problem }: Item, answer: number): string {
  if (modeOf(problem.unit) === 'letter')
    return tag(
      'qti-match',
      {},
      RESPONSE + tag('qti-base-value', { 'base-type': 'identifier' }, letterOf(answer)),
    );
  const { value, within } = asAsked(problem, answer);
  return tag(
    'qti-equal',
    { 'tolerance-mode': 'absolute', tolerance: `${within} ${within}` },
    RESPONSE + tag('qti-base-value', { 'base-type': 'float' }, String(value)),
  );
}

const branch = ({ equals, sets }: { equals: string; sets: string }, index: number): string =>
  tag(index === 0 ? 'qti-response-if' : 'qti-response-else-if', {}, equals + sets);

const numberBody = ({ problem }: Item): string =>
  tag('p', {}, escaped(problem.question)) +
  tag(
    'p',
    {},
    `${tag('qti-text-entry-interaction', { 'response-identifier': 'RESPONSE', 'expected-length': '12' })} ${escaped(problem.unit)}`,
  );

const choiceBody = ({ problem }: Item): string =>
  tag(
    'qti-choice-interaction',
    { 'response-identifier': 'RESPONSE', shuffle: 'false', 'max-choices': '1' },
    tag('qti-prompt', {}, escaped(problem.question)) +
      (problem.options ?? [])
        .map((option, index) =>
          tag('qti-simple-choice', { identifier: letterOf(index + 1) }, escaped(option)),
        )
        .join(''),
  );
