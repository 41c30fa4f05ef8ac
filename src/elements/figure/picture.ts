import { fileName } from '../../comparison/saved/file-name.ts';
import { cardSvg, thumbnailSize } from '../../pictures/card.ts';
import { tableCsv, tableJson } from '../../pictures/data.ts';
import { withoutWords } from '../../pictures/drawing.ts';
import { sheetSizes, sheetSvg } from '../../pictures/sheet.ts';
import type { SheetSize } from '../../pictures/sheet.ts';
import { grounds } from '../../pictures/style.ts';
import { copyText } from '../page/copy-text.ts';
import { download } from '../page/download.ts';
import { pageMeans } from './page-means.ts';
import { pageData, pageDrawing, settled } from './page-sheet.ts';
import { pictureForm } from './picture-form.ts';
import { rasterised } from './rasterised.ts';

interface Picture {
  svg: string;
  width: number;
  height: number;
  /** Pixels of the PNG for each of the picture's. */
  scale: number;
}

/** Takes a figure along as it is now: as a picture in several shapes, or as its numbers. */
export class PictureElement extends HTMLElement {
  connectedCallback(): void {
    this.addEventListener('submit', this.#submitted);
    if (!this.querySelector('form'))
      this.querySelector('details')?.insertAdjacentHTML('beforeend', pictureForm());
  }

  disconnectedCallback(): void {
    this.removeEventListener('submit', this.#submitted);
  }

  #submitted = (event: SubmitEvent): void => {
    event.preventDefault();
    const act = event.submitter instanceof HTMLButtonElement ? event.submitter.value : 'png';
    this.#take(act).then(
      (said) => this.#say(said),
      () =>
        this.#say(
          'The picture could not be made: its face could not be fetched. Check the connection and try again.',
        ),
    );
  };

  async #take(act: string): Promise<string> {
    const { caption, ...data } = pageData(settled(this.#sheet));
    const name = (ending: string) => fileName(data.title, ending);
    const takes: Record<string, () => string | Promise<string>> = {
      csv: () => this.#give(name('csv'), tableCsv(data), 'text/csv'),
      json: () => this.#give(name('json'), tableJson(data), 'application/json'),
      alt: () =>
        copyText(
          caption,
          'The alt text is copied.',
          `The browser did not let the page copy. The alt text is: ${caption}`,
        ),
      svg: async () => this.#give(name('svg'), (await this.#picture()).svg, 'image/svg+xml'),
      png: async () => {
        const { svg, width, height, scale } = await this.#picture();
        return this.#give(name('png'), await rasterised(svg, width, height, scale), 'image/png');
      },
    };
    return (await takes[act]?.()) ?? '';
  }

  async #picture(): Promise<Picture> {
    const shape = this.#chosen('shape');
    const ground = grounds.find((each) => each === this.#chosen('ground')) ?? 'light';
    const means = await pageMeans(ground);
    const { title, caption, about } = pageData(this.#sheet);
    const { Model: model = '', ...facts } = about;
    const invented = this.#sheet.hasAttribute('data-invented') ? 'Invented numbers. ' : '';
    if (shape === 'thumbnail') {
      const [headline] = /×\d+(?:\.\d+)?/.exec(caption) ?? [];
      const drawing = withoutWords(pageDrawing(this.#sheet, 'narrow'));
      const foot = invented === '' ? 'Keenfold' : 'Keenfold · invented';
      const card = { ...(headline ? { headline } : {}), title, drawing, foot, alt: caption };
      const { width, height } = thumbnailSize;
      return { svg: cardSvg(card, thumbnailSize, means), width, height, scale: 1 };
    }
    const size: SheetSize = sheetSizes[shape as keyof typeof sheetSizes] ?? sheetSizes['as drawn'];
    const tall = size.height !== undefined && size.height > size.width;
    const sheet = {
      title,
      caption,
      facts: Object.entries(facts).map(([heading, said]) => `${heading}: ${said}`),
      credit: `${invented}Keenfold, factor model ${model} · ${location.host}${location.pathname}`,
      drawing: pageDrawing(this.#sheet, tall ? 'narrow' : 'wide'),
    };
    return { ...sheetSvg(sheet, size, means), scale: size.height === undefined ? 2 : 1 };
  }

  get #sheet(): HTMLElement {
    const sheet = this.closest<HTMLElement>('.sheet');
    if (!sheet) throw new Error('a picture belongs in a sheet');
    return sheet;
  }

  #chosen(name: string): string {
    return this.querySelector<HTMLSelectElement>(`select[name="${name}"]`)?.value ?? '';
  }

  #give(name: string, content: BlobPart, type: string): string {
    download(name, content, type);
    return `Saved as ${name}.`;
  }

  #say(text: string): void {
    const said = this.querySelector('[data-part="said"]');
    if (said) said.textContent = text;
  }
}
