/** Stands for Plot's `marks/tip.js` and `interactions/pointer.js`. */
import { refuse } from './refuse.mjs';

const no = refuse('tips');

export { no as anchorX, no as anchorY, no as pointer, no as pointerX, no as pointerY, no as Tip, no as tip };
