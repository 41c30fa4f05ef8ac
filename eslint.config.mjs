import js from '@eslint/js';
import astro from 'eslint-plugin-astro';
import { defineConfig, globalIgnores } from 'eslint/config';
import ts from 'typescript-eslint';

/** Imports run one way: content → layout → figure → line-up → model; plots and exercises read line-up and model. */
const not = (folders, why) => ({
  'no-restricted-imports': [
    'error',
    { patterns: folders.map((folder) => ({ group: [`**/${folder}/**`], message: why })) },
  ],
});

export default defineConfig(
  globalIgnores(['dist', '**/.astro', 'node_modules', 'test-results', 'public']),
  js.configs.recommended,
  ts.configs.strict,
  ts.configs.stylistic,
  astro.configs.recommended,
  {
    rules: {
      // Types read as shapes; both forms have their place.
      '@typescript-eslint/consistent-type-definitions': 'off',
      '@typescript-eslint/consistent-type-imports': ['error', { disallowTypeAnnotations: false }],
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      'no-undef': 'off',
    },
  },
  {
    files: ['src/model/**'],
    rules: not(
      ['lineup', 'plots', 'topics', 'figures', 'elements', 'bench', 'layouts', 'exercises'],
      'the model knows nothing of the site',
    ),
  },
  {
    files: ['src/exercises/**'],
    rules: not(
      ['plots', 'topics', 'figures', 'elements', 'bench', 'layouts', 'lineup'],
      'exercises know the model only',
    ),
  },
  {
    files: ['src/kit/**'],
    rules: not(
      ['plots', 'topics', 'figures', 'elements', 'bench', 'layouts', 'lineup'],
      'the class kit knows exercises and checks only',
    ),
  },
  {
    files: ['src/lineup/**'],
    rules: not(
      ['plots', 'topics', 'figures', 'elements', 'bench', 'layouts', 'exercises'],
      'the line-up knows the model only',
    ),
  },
  {
    files: ['src/plots/**'],
    rules: not(
      ['topics', 'figures', 'elements', 'bench', 'layouts', 'exercises'],
      'a plot takes values and knows no page',
    ),
  },
  {
    files: ['src/pictures/**'],
    rules: not(
      ['topics', 'figures', 'elements', 'bench', 'layouts', 'exercises'],
      'a picture takes a drawing and its words, and knows no page',
    ),
  },
  {
    files: ['src/topics/**'],
    rules: not(
      ['figures', 'elements', 'bench', 'layouts'],
      'a topic gathers what can be shown and knows no page',
    ),
  },
);
