declare namespace App {
  interface Locals {
    /** The scene the page is built with. */
    scene?: import('./lineup/scene.ts').Scene;
    /** Figures on the page so far, for their numbers. */
    figures?: number;
    /** Sliders on the page so far, for their ids. */
    sliders?: number;
  }
}
