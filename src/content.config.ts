import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';
import { CONDITIONS } from './components/checklist/shapes.ts';

const anchor = z.string().regex(/^[a-z][a-z0-9-]*$/, 'an item id is a short word for links, such as kill-cord');

const point = z.strictObject({
  id: anchor,
  text: z.string().min(1),
  why: z.string().optional(),
  /** Conditions on the trip that must all hold. Leave out what concerns everybody. */
  when: z.array(z.enum(CONDITIONS)).min(1).optional(),
});

const checklists = defineCollection({
  // Shared with the element, which shows the same lists on other sites.
  loader: glob({ pattern: '*.json', base: 'shared/checklists' }),
  schema: z.strictObject({
    title: z.string(),
    summary: z.string(),
    order: z.number().int(),
    sections: z.array(z.strictObject({ title: z.string(), note: z.string().optional(), items: z.array(point).min(1) })),
    sources: z.array(z.string()),
  }),
});

export const collections = { checklists };
