import { defineAll } from './define.ts';
import { start } from './page.ts';

/** The live half of a page, loaded at the first touch or when the address carries a line-up. */
start();
defineAll();
document.documentElement.dataset['live'] = 'on';
