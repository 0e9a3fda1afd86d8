import { describe, expect, it } from 'vitest';

const modules = {
  'homeleg-quantity-field': () => import('../../src/components/field/quantity-field.ts'),
  'homeleg-choice-field': () => import('../../src/components/field/choice-field.ts'),
  'homeleg-fill-field': () => import('../../src/components/field/fill-field.ts'),
  'homeleg-flow-field': () => import('../../src/components/conditions-form/flow-field.ts'),
  'homeleg-conditions-form': () => import('../../src/components/conditions-form/conditions-form.ts'),
  'homeleg-reserve-form': () => import('../../src/components/reserve-form/reserve-form.ts'),
  'homeleg-plate-field': () => import('../../src/components/craft-form/plate-field.ts'),
  'homeleg-attitude': () => import('../../src/components/attitude/attitude.ts'),
  'homeleg-seat-advice': () => import('../../src/components/load-advice/seat-advice.ts'),
  'homeleg-capacity-table': () => import('../../src/components/load-advice/capacity-table.ts'),
  'homeleg-payload-plot': () => import('../../src/components/load-advice/payload-plot.ts'),
  'homeleg-load-questions': () => import('../../src/components/load-advice/load-questions.ts'),
  'homeleg-craft-form': () => import('../../src/components/craft-form/craft-form.ts'),
};

describe('form elements', () => {
  it.each(Object.entries(modules))('%s can be imported where there is no page', async (_tag, load) => {
    expect(globalThis).not.toHaveProperty('document');
    const classes = Object.values(await load()).filter((entry) => typeof entry === 'function');
    expect(classes.length).toBeGreaterThan(0);
  });
});
