import { parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import { rounded } from '../../src/figure-kit/rounded.ts';

test('cuts coordinates to tenths and names of marks away, and leaves texts and scales as they are', () => {
  const { document } = parseHTML(
    '<svg aria-label="0.0251 mm"><g data-mark="line" transform="translate(0.5,12.34567)"><path d="M-1.005001,2L3.14159,1.2345e-7"></path></g><g transform="scale(0.01234)"><text x="7.777777">×1.2345</text></g></svg>',
  );
  const svg = rounded(document.querySelector('svg') as unknown as SVGSVGElement);
  expect(svg.outerHTML.replaceAll('"', "'")).toBe(
    "<svg aria-label='0.0251 mm'><g transform='translate(0.5,12.3)'><path d='M-1,2L3.1,0' /></g><g transform='scale(0.01234)'><text x='7.8'>×1.2345</text></g></svg>",
  );
});
