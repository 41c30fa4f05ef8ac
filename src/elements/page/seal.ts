import { shownNames } from '../../comparison/knife-names.ts';
import { fileName } from '../../comparison/saved/file-name.ts';
import { openSeal, sealPrediction } from '../../comparison/seal/seal.ts';
import type { Sealed } from '../../comparison/seal/seal.ts';
import type { ComparisonEntry } from '../../comparison/entry.ts';
import type { Scene } from '../../scene/scene.ts';
import { MODEL_NUMBER } from '../../model/index.ts';
import { copyText } from './copy-text.ts';
import { download } from './download.ts';
import { SceneElement } from './scene-element.ts';
import { saidThen } from '../../phrases/older-link.ts';

/** Seals the prediction of the page's comparison, and checks a seal against its file. */
export class SealElement extends SceneElement {
  #entry: ComparisonEntry | undefined;
  #sealed: Sealed | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.addEventListener('click', this.#pressed);
    this.addEventListener('submit', this.#check);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.removeEventListener('click', this.#pressed);
    this.removeEventListener('submit', this.#check);
  }

  /** A seal is of one comparison: another one has none yet. */
  protected override show({ entry }: Scene): void {
    this.#entry = entry;
    this.#sealed = undefined;
    this.#show();
  }

  #show(): void {
    const made = this.place('made');
    if (made) made.hidden = this.#sealed === undefined;
    this.#say('seal', this.#sealed?.seal ?? '');
    this.#say('said', '');
  }

  #pressed = (event: Event): void => {
    const act = event.target instanceof Element ? event.target.closest('button')?.dataset['act'] : undefined;
    const entry = this.#entry;
    if (!entry || act === undefined) return;
    if (act === 'seal') void this.#seal(entry);
    const sealed = this.#sealed;
    if (!sealed) return;
    if (act === 'file') {
      download(fileName(`seal ${sealed.seal.slice(0, 4)} ${entry.title}`, 'json'), sealed.file);
      this.#say('said', 'Keep the file: without it nobody can open the seal, you included.');
    }
    if (act === 'copy') {
      const post = `Sealed before the cutting: ${sealed.seal} (Keenfold, factor model no. ${MODEL_NUMBER}). The file that opens it follows.`;
      void copyText(
        post,
        'The line to post is copied.',
        `The browser did not let the page copy. Post this: ${post}`,
      ).then((said) => this.#say('said', said));
    }
  };

  async #seal(entry: ComparisonEntry): Promise<void> {
    if (!globalThis.isSecureContext) {
      this.#say('problem', 'The browser seals only on a page that came over https. Open the page that way.');
      return;
    }
    this.#sealed = await sealPrediction(entry);
    this.#show();
    this.#say('said', 'Sealed. Save the file, and post the seal.');
  }

  #check = (event: Event): void => {
    event.preventDefault();
    const [file] = this.querySelector<HTMLInputElement>('input[type=file]')?.files ?? [];
    const seal = this.querySelector<HTMLInputElement>('input[name=posted]')?.value ?? '';
    if (!file) {
      this.#say('checked', 'Choose the file that opens the seal first.');
      return;
    }
    void file.text().then(async (text) => {
      const opened = await openSeal(text, seal);
      this.querySelector('[data-part=checked]')?.setAttribute('data-verdict', opened.ok ? 'right' : 'wrong');
      if (!opened.ok) {
        this.#say('checked', opened.why);
        return;
      }
      const { entry, modelNumber, sameModel } = opened;
      const names = shownNames(entry.knives);
      const nameOf = (id: string) => names.get(id) ?? id;
      this.#say(
        'checked',
        `They belong together, to the last digit. What was sealed: “${entry.title}”, ${nameOf(entry.subject)} against ${nameOf(entry.baseline)}, ${saidThen(opened)}. It was made with model no. ${modelNumber}${sameModel ? ', the same as this page’s' : '. This page has another, so look at what was said then'}.`,
      );
    });
  };

  #say(part: string, text: string): void {
    const place = this.place(part);
    if (place && place.textContent !== text) place.textContent = text;
  }
}
