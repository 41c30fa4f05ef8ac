/**
 * What stands for a part of Plot that is left out.
 *
 * @param {string} what the figures that would need it
 * @returns {() => never} throws, so that a figure that asks for it fails in every test that draws it
 */
export const refuse = (what) => () => {
  throw new Error(`Plot is built without ${what}: see src/figure-kit/lean-plot.mjs`);
};
