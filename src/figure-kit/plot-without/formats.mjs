/** Stands for Plot's `format.js`: texts as they are and numbers with thousands marked, but no dates. */
import { refuse } from './refuse.mjs';

const no = refuse('dates');
/** Made when the first number is written: most of our texts come written. */
let numbers;
const number = (value) =>
  isNaN(value) ? undefined : (numbers ??= new Intl.NumberFormat('en-US')).format(value);

export const formatDefault = (value) => {
  if (typeof value === 'number') return number(value);
  return value == null ? value : `${value}`;
};
export { no as formatIsoDate, no as formatMonth, no as formatNumber, no as formatWeekday };
