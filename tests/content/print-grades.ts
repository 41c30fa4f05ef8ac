import { gradeOf, proseOf } from './grade.ts';
import { filesBelow } from './reading.ts';

// Run by hand: node tests/content/print-grades.ts
for (const { path, text } of filesBelow('content', '.mdx')) {
  console.log(gradeOf(proseOf(text)).toFixed(1), path);
}
