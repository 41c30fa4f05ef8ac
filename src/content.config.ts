import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';

/** A typo in a lesson's head fails the build and names the file. */
const lessons = defineCollection({
  loader: glob({
    pattern: '*.mdx',
    base: './content/lessons',
    // A lesson's address is its name without its number.
    generateId: ({ entry }) => entry.replace(/^\d+-/, '').replace(/\.mdx$/, ''),
  }),
  schema: z.strictObject({
    order: z.number().int().min(1).max(99),
    /** The question a viewer really asks: the title. */
    question: z.string().endsWith('?'),
    short: z.string(),
    description: z.string().max(160),
    /** One line to take away. */
    take: z.string(),
    minutes: z.number().int().min(1).max(60),
    /** What the example changes in the loft's comparison. */
    comparison: z
      .strictObject({
        subject: z.string(),
        baseline: z.string(),
        reading: z.enum(['quick', 'careful']),
        faceValues: z.array(z.number()).max(10).nullable(),
        /** Toughness by the id of a knife: the loft leaves it open, a lesson on chipping invents it. */
        toughness: z.record(z.string(), z.number().positive()),
      })
      .partial(),
  }),
});

/** Lessons told once more in a context without knives. */
const plain = defineCollection({
  loader: glob({
    pattern: '*.mdx',
    base: './content/plain',
    generateId: ({ entry }) => entry.replace(/^\d+-/, '').replace(/\.mdx$/, ''),
  }),
  schema: z.strictObject({
    order: z.number().int().min(1).max(99),
    question: z.string().endsWith('?'),
    short: z.string(),
    description: z.string().max(160),
    take: z.string(),
    minutes: z.number().int().min(1).max(60),
    /** The percentages its figures open with. */
    faceValues: z.array(z.number()).min(1).max(10),
  }),
});

export const collections = { lessons, plain };
