import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { makeSet } from '../../../src/exercises/set/index.ts';
import { FIRST_SET } from '../../../src/teach/set/address.ts';
import { formHtml, formsKeyHtml } from '../../../src/teach/forms/forms-html.ts';
import { FIRST_FORMS, matchedForms } from '../../../src/teach/forms/forms.ts';
import { setSheets } from '../../../src/teach/set/set-sheets.ts';

const PAGE = 'https://keenfold.example/class/';

/** Sheet, key and both forms as one digest. */
const program = `
  import { createHash } from 'node:crypto';
  import { makeSet } from './src/exercises/set/index.ts';
  import { FIRST_SET } from './src/teach/set/address.ts';
  import { formHtml, formsKeyHtml } from './src/teach/forms/forms-html.ts';
  import { FIRST_FORMS, matchedForms } from './src/teach/forms/forms.ts';
  import { setSheets } from './src/teach/set/set-sheets.ts';
  const { sheet, key } = setSheets(makeSet(FIRST_SET), '${PAGE}');
  const forms = matchedForms(FIRST_FORMS);
  const all = sheet + key + formHtml(forms, 'before') + formHtml(forms, 'after') + formsKeyHtml(forms);
  console.log(new Intl.NumberFormat().resolvedOptions().locale, new Date(0).getTimezoneOffset(), createHash('sha256').update(all).digest('hex'));`;

test.each([
  ['de_DE.UTF-8', 'Asia/Kathmandu', 'de-DE -330'],
  ['ar_EG.UTF-8', 'America/St_Johns', 'ar-EG 210'],
])(
  'the same seed makes the same sheets under %s in %s',
  (locale, zone, seen) => {
    const { sheet, key } = setSheets(makeSet(FIRST_SET), PAGE);
    const forms = matchedForms(FIRST_FORMS);
    const here = sheet + key + formHtml(forms, 'before') + formHtml(forms, 'after') + formsKeyHtml(forms);
    const { stdout, stderr } = spawnSync(process.execPath, ['--input-type=module', '--eval', program], {
      env: { ...process.env, LC_ALL: locale, LANG: locale, TZ: zone, NODE_OPTIONS: '' },
      encoding: 'utf8',
    });
    expect(`${stdout}${stderr}`.trim()).toBe(`${seen} ${createHash('sha256').update(here).digest('hex')}`);
  },
  60_000,
);
