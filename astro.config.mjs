import { defineConfig } from 'astro/config';
import mdx from '@astrojs/mdx';
import { unified } from '@astrojs/markdown-remark';
import remarkMath from 'remark-math';
import rehypeKatex from 'rehype-katex';
import { groups } from './src/build/chunks.mjs';
import { readWhole } from './src/build/read-whole.mjs';
import { headers } from './src/build/headers/integration.mjs';
import { model } from './src/build/model/integration.mjs';
import { offline } from './src/offline/integration.mjs';
import { straightToStart } from './src/build/straight-to-start.mjs';
import { zipApart } from './src/teach/qti/zip-apart.mjs';
import { leanPlot } from './src/figure-kit/lean-plot.mjs';
import { sitemap } from './src/build/sitemap/integration.mjs';

export default defineConfig({
  // The address the site is published at; only link previews and the site map need it.
  site: process.env['KEENFOLD_SITE'] ?? 'https://keenfold.example',
  base: process.env['KEENFOLD_BASE'] ?? '/',
  trailingSlash: 'always',
  integrations: [mdx(), straightToStart(), sitemap(), headers(), model(), offline()],
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
              codeSplitting: { groups },
            },
          },
        },
      },
    },
  },
});
