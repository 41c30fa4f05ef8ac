import { readAnswer } from '../../exercises/reader/index.ts';
import { heldBeside } from '../../scene/held-beside.ts';
import { optionSaid, pollOf, questionAsked } from '../../topics/ask/poll.ts';
import type { Scene } from '../../scene/scene.ts';
import { draw } from '../../figure-kit/draw.ts';
import { sizes } from '../../figure-kit/figure.ts';
import { guessDots } from '../../topics/ask/figure-guess-dots.ts';
import { copyText } from './copy-text.ts';
import { firstFew } from './first-few.ts';
import { keptOut } from './long-text.ts';
import { linkTo } from './page.ts';
import { readGuesses } from './read-guesses.ts';
import { SceneElement } from './scene-element.ts';

/** The question for an audience, and what came back: its guesses as dots beside the model's answer. */
export class AudienceElement extends SceneElement {
  #scene: Scene | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.addEventListener('beforeinput', this.#coming);
    this.addEventListener('input', this.#write);
    this.addEventListener('click', this.#pressed);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.removeEventListener('beforeinput', this.#coming);
    this.removeEventListener('input', this.#write);
    this.removeEventListener('click', this.#pressed);
  }

  protected override show(scene: Scene): void {
    this.#scene = scene;
    this.#write();
  }

  #coming = (event: Event): void => {
    const why = keptOut(event);
    if (why !== '') this.#say('problems', why);
  };

  #pressed = (event: Event): void => {
    const act = event.target instanceof Element ? event.target.closest('button')?.dataset['act'] : undefined;
    const scene = this.#scene;
    if (act === undefined || !scene) return;
    void copyQuestion(scene, act === 'poll').then(
      (said) => this.#say('copied', said),
      () => this.#say('copied', 'A part of the page did not come. Press again to fetch it.'),
    );
  };

  #write = (): void => {
    const scene = this.#scene;
    if (!scene) return;
    const { guesses, problems } = readGuesses(this.#typed('guesses'), pollOf(scene));
    const measured = this.#measured();
    this.#say('problems', firstFew(problems));
    const sheet = this.place('sheet');
    if (!sheet) return;
    sheet.hidden = guesses.length === 0;
    if (guesses.length === 0) return;
    const figure = guessDots(guesses, { ...heldBeside(scene), measured });
    for (const drawing of this.querySelectorAll<HTMLElement>('.drawing')) {
      const size = drawing.dataset['size'] === 'narrow' ? 'narrow' : 'wide';
      drawing.replaceChildren(draw(figure, scene, sizes[size], document, `guess-dots-${size}`));
    }
    this.#say('title', figure.title(scene));
    this.#say('reading', figure.reading(scene));
    this.#say('caption', figure.caption(scene));
    this.place('rows')?.replaceChildren(
      ...figure.table(scene).rows.map(([head = '', value = '']) => {
        const row = document.createElement('tr');
        const name = Object.assign(document.createElement('th'), { textContent: head, scope: 'row' });
        row.append(name, Object.assign(document.createElement('td'), { textContent: value }));
        return row;
      }),
    );
  };

  /** The ratio that was measured, where one is typed and can be read. */
  #measured(): number | null {
    const typed = this.#typed('measured');
    const read = readAnswer(typed, 'times as long');
    const wrong = typed.trim() !== '' && !read.ok;
    this.querySelector('[name=measured]')?.setAttribute('aria-invalid', String(wrong));
    this.#say('measured-problem', wrong ? read.message : '');
    return read.ok ? read.value : null;
  }

  #typed(name: string): string {
    const field = this.querySelector<HTMLInputElement | HTMLTextAreaElement>(`[name=${name}]`);
    return field?.value ?? '';
  }

  #say(part: string, text: string): void {
    const place = this.place(part);
    if (place && place.textContent !== text) place.textContent = text;
  }
}

/** Copies the poll, or the link to the question alone; what to say of it. */
async function copyQuestion(scene: Scene, isPoll: boolean): Promise<string> {
  const question = questionAsked(scene);
  const options = pollOf(scene).map(optionSaid);
  const link = await linkTo('explained/ask/');
  return copyText(
    isPoll ? [question, ...options, link].join('\n') : link,
    isPoll ? 'The poll is copied, with its link.' : 'The link to the question is copied.',
    `The browser did not let the page copy. The link is: ${link}`,
  );
}
