import { expect, it } from 'vitest';

const modules = {
  'homeleg-suit': () => import('../../../src/components/suit/define.ts'),
  'homeleg-load-table': () => import('../../../src/components/load-table/define.ts'),
};

it.each(Object.entries(modules))('%s can be imported where there is no page', async (_tag, load) => {
  expect(globalThis).not.toHaveProperty('document');
  await expect(load()).resolves.toBeDefined();
});
