import { comparisonTable } from '../../compare/sheet/table.ts';
import type { Scene } from '../../scene/scene.ts';
import { codeSaid } from '../../compare/sheet/words.ts';
import { bandOf } from './band-of.ts';
import { copyText } from './copy-text.ts';
import { example, linkTo } from './page.ts';
import { SceneElement } from './scene-element.ts';
import { fillHeads, fillRows } from './table-rows.ts';

/** The comparison on one sheet of paper, with a code of its link; or the same as Markdown. */
export class LineSheetElement extends SceneElement {
  #scene: Scene | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.addEventListener('click', this.#pressed);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.removeEventListener('click', this.#pressed);
  }

  protected override show(scene: Scene): void {
    const isBuilt = this.#scene === undefined && scene.entry === example;
    this.#scene = scene;
    if (isBuilt) return;
    const { columns, rows } = comparisonTable(scene);
    const table = this.place('table');
    fillHeads(table, columns);
    fillRows(table, rows);
    this.#write('title', scene.entry.title);
    void Promise.all([linkTo('compare/'), import('../../pictures/link-code.ts')]).then(
      ([link, { linkCode }]) => scene === this.#scene && this.#showCode(linkCode(link)),
      () => scene === this.#scene && this.#showCode(''),
    );
    const invented = this.place('invented');
    if (invented) invented.hidden = scene.entry.invented !== true;
  }

  #showCode(code: string): void {
    const place = this.place('code');
    if (place) place.innerHTML = code;
    this.#write('code-said', codeSaid(code !== ''));
  }

  #pressed = (event: Event): void => {
    const button = event.target instanceof Element ? event.target.closest('button') : null;
    if (button?.dataset['act'] === 'print') print();
    if (button?.dataset['act'] === 'markdown') void this.#copy();
  };

  async #copy(): Promise<void> {
    const scene = this.#scene;
    if (!scene) return;
    const { comparisonMarkdown } = await import('../../compare/sheet/markdown.ts');
    const text = comparisonMarkdown(scene, await linkTo('compare/'), await bandOf(scene, 'more'));
    const said = await copyText(
      text,
      `Copied: ${text.length} characters, the link among them.`,
      'The browser did not let the page copy. Saved keeps the same as a file.',
    );
    this.#write('said', said);
  }

  #write(part: string, text: string): void {
    const place = this.place(part);
    if (place) place.textContent = text;
  }
}
