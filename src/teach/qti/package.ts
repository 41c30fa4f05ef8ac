import { strToU8, zipSync } from 'fflate';
import type { ProblemSet } from '../../exercises/set/index.ts';
import { setCode } from '../set/address.ts';
import { tag, xmlFile } from '../set/xml.ts';
import { itemId, itemXml } from './item.ts';
import { ASI, PACKAGE } from './namespaces.ts';

const TEST = 'assessment.xml';
const href = (id: string): string => `items/${id}.xml`;

/** The files of a set as a QTI 3.0 package: the manifest, the test, and an item for each problem. */
export function qtiFiles(set: ProblemSet): Record<string, string> {
  const ids = set.items.map(itemId);
  return {
    'imsmanifest.xml': manifest(set, ids),
    [TEST]: test(set, ids),
    ...Object.fromEntries(set.items.map((item) => [href(itemId(item)), itemXml(item)])),
  };
}

/** The package as one zip file; the same set makes the same bytes. */
export const qtiPackage = (set: ProblemSet): Uint8Array<ArrayBuffer> =>
  zipSync(
    Object.fromEntries(Object.entries(qtiFiles(set)).map(([name, text]) => [name, strToU8(text)])),
    // The earliest date a zip can hold: when it was made is nobody's concern.
    { mtime: new Date(1980, 0, 1), level: 9 },
  ) as Uint8Array<ArrayBuffer>;

const name = (set: ProblemSet): string => `set-${setCode(set)}`;

const test = (set: ProblemSet, ids: string[]): string =>
  xmlFile(
    tag(
      'qti-assessment-test',
      { xmlns: ASI, identifier: name(set), title: `Problems, version ${set.version}, seed ${set.seed}` },
      tag(
        'qti-test-part',
        { identifier: 'part-1', 'navigation-mode': 'nonlinear', 'submission-mode': 'individual' },
        tag(
          'qti-assessment-section',
          { identifier: 'section-1', title: 'Problems', visible: 'true' },
          ids
            .map((id) => tag('qti-assessment-item-ref', { identifier: `ref-${id}`, href: href(id) }))
            .join('\n'),
        ),
      ),
    ),
  );

const manifest = (set: ProblemSet, ids: string[]): string =>
  xmlFile(
    tag(
      'manifest',
      { xmlns: PACKAGE, identifier: `package-${name(set)}` },
      [
        tag('metadata', {}, tag('schema', {}, 'QTI Package') + tag('schemaversion', {}, '3.0.0')),
        tag('organizations'),
        tag(
          'resources',
          {},
          tag(
            'resource',
            { identifier: 'test', type: 'imsqti_test_xmlv3p0', href: TEST },
            tag('file', { href: TEST }) + ids.map((id) => tag('dependency', { identifierref: id })).join(''),
          ) +
            ids
              .map((id) =>
                tag(
                  'resource',
                  { identifier: id, type: 'imsqti_item_xmlv3p0', href: href(id) },
                  tag('file', { href: href(id) }),
                ),
              )
              .join('\n'),
        ),
      ].join('\n'),
    ),
  );
