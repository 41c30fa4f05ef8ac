import { grounds } from '../../pictures/style.ts';
import { sheetSizes } from '../../pictures/sheet.ts';

/** The shapes a picture can have. */
export const shapes = [...Object.keys(sheetSizes), 'thumbnail'];

const options = (all: readonly string[]): string =>
  all.map((each) => `<option value="${each}">${each}</option>`).join('');

/** What can be taken along of a figure, made when it is first asked for: no page carries it for every figure. */
export const pictureForm = (): string => `<form class="picture-form">
  <p class="answer-line">
    <label>Shape <select name="shape">${options(shapes)}</select></label>
    <label>Ground <select name="ground">${options(grounds)}</select></label>
  </p>
  <p class="tools">
    <button type="submit" name="act" value="png">Save as PNG</button>
    <button type="submit" name="act" value="svg">Save as SVG</button>
    <button type="submit" name="act" value="alt">Copy the alt text</button>
    <button type="submit" name="act" value="csv">Numbers as CSV</button>
    <button type="submit" name="act" value="json">Numbers as JSON</button>
  </p>
  <p role="status" class="said" data-part="said"></p>
</form>`;
