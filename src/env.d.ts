declare namespace App {
  interface Locals {
    /** The scene the page is built with. */
    scene?: import('./scene/scene.ts').Scene;
    /** True where the page is of one published comparison and follows no other. */
    still?: boolean;
    /** Figures on the page so far, for their numbers. */
    figures?: number;
    /** Problems so far on a page that prints their answers at its back; none where they are answered on the page. */
    printed?: import('./exercises/index.ts').Problem[];
    /** Sliders on the page so far, for their ids. */
    sliders?: number;
  }
}

declare module 'subset-font' {
  /** A face with only the signs of a text, its axes fixed where they are named. */
  export default function subsetFont(
    face: Uint8Array,
    signs: string,
    options: { targetFormat: 'truetype' | 'woff2'; variationAxes?: Record<string, number> },
  ): Promise<Uint8Array>;
}
