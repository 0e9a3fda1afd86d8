import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';

const anchor = z.string().regex(/^[a-z][a-z0-9-]*$/, 'an item id is a short word for links, such as kill-cord');

const point = z.strictObject({
  id: anchor,
  text: z.string().min(1),
  why: z.string().optional(),
  /** Leave out what concerns everybody. */
  applies: z.enum(['petrol', 'electric', 'two-stroke', 'alone', 'crew', 'inflatable']).optional(),
});

const checklists = defineCollection({
  loader: glob({ pattern: '*.json', base: 'src/content/checklists' }),
  schema: z.strictObject({
    title: z.string(),
    summary: z.string(),
    order: z.number().int(),
    sections: z.array(z.strictObject({ title: z.string(), note: z.string().optional(), items: z.array(point).min(1) })),
    sources: z.array(z.string()),
  }),
});

export const collections = { checklists };
