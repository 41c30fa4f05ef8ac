import { defineConfig } from 'astro/config';
import mdx from '@astrojs/mdx';
import { unified } from '@astrojs/markdown-remark';
import remarkMath from 'remark-math';
import rehypeKatex from 'rehype-katex';
import { readWhole } from './src/elements/read-whole.mjs';
import { headers } from './src/headers/integration.mjs';
import { offline } from './src/offline/integration.mjs';
import { zipApart } from './src/kit/qti/zip-apart.mjs';
import { leanPlot } from './src/plots/lean-plot.mjs';
import { sitemap } from './src/sitemap/integration.mjs';

/** Modules of the script before the first touch that the live half uses too. */
const start = /preload-helper|rolldown.runtime|src\/(elements\/carry|topics\/index)\.ts/;

export default defineConfig({
  // The address the site is published at; only link previews and the site map need it.
  site: process.env['KEENFOLD_SITE'] ?? 'https://keenfold.example',
  base: process.env['KEENFOLD_BASE'] ?? '/',
  trailingSlash: 'always',
  integrations: [mdx(), sitemap(), headers(), offline()],
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
              // What the start shares with the live half, which comes first; Plot in one piece; the live half
              // of every page with all it needs, which packs better together; all else by what uses it, so that a
              // page fetches no more than it shows.
              codeSplitting: {
                groups: [
                  { name: 'start', test: start, priority: 1 },
                  { name: 'plot', test: /@observablehq/ },
                  { name: 'live', test: /src\/elements\/live\.ts/ },
                ],
              },
            },
          },
        },
      },
    },
  },
});
