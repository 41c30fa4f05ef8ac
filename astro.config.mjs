import { defineConfig } from 'astro/config';
import mdx from '@astrojs/mdx';
import { unified } from '@astrojs/markdown-remark';
import remarkMath from 'remark-math';
import rehypeKatex from 'rehype-katex';
import { readWhole } from './src/build/read-whole.mjs';
import { headers } from './src/build/headers/integration.mjs';
import { model } from './src/build/model/integration.mjs';
import { offline } from './src/offline/integration.mjs';
import { zipApart } from './src/teach/qti/zip-apart.mjs';
import { leanPlot } from './src/figure-kit/lean-plot.mjs';
import { sitemap } from './src/build/sitemap/integration.mjs';

/** Modules of the script before the first touch that the live half uses too. */
const start = /preload-helper|rolldown.runtime|src\/(elements\/page\/(address|carry)|topics\/index)\.ts/;

/** The live half, and of what topics share what is too small for a fetch of its own. */
const live =
  /src\/(elements\/page\/live|scene\/(pair|terms|factors)|phrases\/(job|unknown-measures|refused-work|list|only-together|sentences-of))\.ts/;
/** What draws a figure, and what most figures are drawn with. */
const figure =
  /src\/(elements\/figure\/figure|figure-kit\/(draw|figure|grid|ratio-axis|short-name|steady))\.ts/;
/** What Compare and Test keep and change by, and what of runs several share: too small for fetches of their own. */
const keep =
  /src\/(elements\/(page\/(keep-own|undo-key)|fields\/knives-changed)|comparison\/saved\/last)\.ts/;
const log = /src\/(phrases\/counted|comparison\/first-plan|scene\/logged-name|model\/runs\/sheet-code)\.ts/;

export default defineConfig({
  // The address the site is published at; only link previews and the site map need it.
  site: process.env['KEENFOLD_SITE'] ?? 'https://keenfold.example',
  base: process.env['KEENFOLD_BASE'] ?? '/',
  trailingSlash: 'always',
  integrations: [mdx(), sitemap(), headers(), model(), offline()],
  markdown: {
    syntaxHighlight: false,
    processor: unified({
      remarkPlugins: [remarkMath],
      // MathML needs no inline style, which the content security policy forbids, and keeps the TeX for copying.
      rehypePlugins: [[rehypeKatex, { output: 'mathml' }]],
    }),
  },
  security: {
    csp: {
      directives: [
        "default-src 'none'",
        "font-src 'self'",
        "img-src 'self' data:",
        "connect-src 'self'",
        "worker-src 'self'",
        "manifest-src 'self'",
        "base-uri 'none'",
        "form-action 'none'",
      ],
    },
  },
  build: { inlineStylesheets: 'never' },
  vite: {
    plugins: [leanPlot(), zipApart(), readWhole()],
    build: { assetsInlineLimit: 0 },
    worker: { format: 'es' },
    environments: {
      client: {
        build: {
          rolldownOptions: {
            output: {
              // What the start shares with the live half, which comes first; the live half of every page with all it
              // needs, which packs better together; Plot in one piece, and what every figure needs besides; all else
              // by what uses it, so that a page fetches no more than it shows.
              codeSplitting: {
                groups: [
                  { name: 'start', test: start, priority: 3 },
                  { name: 'live', test: live, priority: 2 },
                  { name: 'plot', test: /@observablehq/, priority: 1 },
                  { name: 'figure', test: figure },
                  { name: 'keep', test: keep },
                  { name: 'log', test: log },
                ],
              },
            },
          },
        },
      },
    },
  },
});
