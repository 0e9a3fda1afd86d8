import fleetJson from '../../../shared/craft/hire-fleet.json' with { type: 'json' };
import { type CardAsked, seasonCard } from '../../../src/core/hire/season-card.ts';
import type { Fleet } from '../../../src/core/hire/shapes.ts';
import { keeping } from './keeping.ts';

const [open, catamaran, launch] = (fleetJson as unknown as Fleet).boats;

function card(asked: Partial<CardAsked> & Pick<CardAsked, 'boat'>): unknown {
  const steps = seasonCard(
    { water: 'sea', fill: 0.9, fetch: 1500, stream: 0.3, reserve: [{ kind: 'thirds' }], ...asked },
    (trip) => trip,
  );
  const shares: number[] = [];
  for (;;) {
    const step = steps.next();
    if (step.done) return { shares, ...step.value };
    shares.push(step.value);
  }
}

keeping('hire-card', {
  'the open hull': () => card({ boat: open! }),
  'the catamaran in sheltered water': () => card({ boat: catamaran!, fetch: 600, stream: 0 }),
  'the launch on a lake': () =>
    card({ boat: launch!, water: 'fresh', batteryTemperatureC: 15, reserve: [{ kind: 'share', share: 0.2 }] }),
});
