import type { Means } from '../../pictures/frame.ts';
import { pictureStyle } from '../../pictures/style.ts';
import type { Ground } from '../../pictures/style.ts';

/** Every rule of the page's own style sheets, as text. */
const pageCss = (): string =>
  [...document.styleSheets].flatMap((sheet) => [...sheet.cssRules].map(({ cssText }) => cssText)).join('\n');

/** The page itself may have begun without its face and go on so; words of pictures are measured in the file they take along. */
const measured = 'Plex measured';

let face: Promise<string> | undefined;

/** The file of the page's face as a `data:` address. */
function faceData(): Promise<string> {
  face ??= fetchFace().catch((error: unknown) => {
    face = undefined;
    throw error;
  });
  return face;
}

/** Where the page's own style sheet has the face. */
function faceAddress(): string | undefined {
  for (const sheet of document.styleSheets)
    for (const rule of sheet.cssRules) {
      if (
        !(rule instanceof CSSFontFaceRule) ||
        !/^["']?Plex["']?$/.test(rule.style.getPropertyValue('font-family'))
      )
        continue;
      const [, path] = /url\(["']?([^"')]+)/.exec(rule.style.getPropertyValue('src')) ?? [];
      if (path !== undefined) return new URL(path, sheet.href ?? document.baseURI).href;
    }
  return undefined;
}

async function fetchFace(): Promise<string> {
  const address = faceAddress();
  if (address === undefined) throw new Error('the page names no face');
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`the face answers ${answer.status}`);
  const file = await answer.arrayBuffer();
  document.fonts.add(await new FontFace(measured, file, { weight: '400 700' }).load());
  const bytes = new Uint8Array(file);
  return `data:font/woff2;base64,${btoa([...bytes].map((byte) => String.fromCharCode(byte)).join(''))}`;
}

/** What pictures of this page are made with: its rules and inks, its face, and the widths of words in it. */
export async function pageMeans(ground: Ground): Promise<Means> {
  const pen = document.createElement('canvas').getContext('2d');
  if (!pen) throw new Error('this browser draws no canvas');
  return {
    style: pictureStyle(pageCss(), ground),
    ground,
    face: await faceData(),
    measure(text, sizePx, bold) {
      // Widths grow in proportion to the type, and are found once at a size at which rounding does not tell.
      pen.font = `${bold ? 600 : 400} 100px ${measured}`;
      return (pen.measureText(text).width * sizePx) / 100;
    },
  };
}
