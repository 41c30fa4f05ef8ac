import js from '@eslint/js';
import astro from 'eslint-plugin-astro';
import { defineConfig, globalIgnores } from 'eslint/config';
import ts from 'typescript-eslint';
import { importProblem } from './src/build/rooms.mjs';

/**
 * Checks every import against the table of rooms. ESLint's own `no-restricted-imports` compares the text of an import
 * with patterns and does not resolve it, so it cannot tell `../model/memoize.ts` in one room from another's.
 *
 * @type {import('eslint').Rule.RuleModule}
 */
const direction = {
  create(context) {
    const check = ({ source }) => {
      if (typeof source?.value !== 'string') return;
      const message = importProblem(context.physicalFilename, source.value);
      if (message) context.report({ node: source, message });
    };
    return {
      ImportDeclaration: check,
      ImportExpression: check,
      ExportNamedDeclaration: check,
      ExportAllDeclaration: check,
      TSImportType: check,
    };
  },
};

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
    files: ['src/**'],
    plugins: { rooms: { rules: { direction } } },
    rules: { 'rooms/direction': 'error' },
  },
);
