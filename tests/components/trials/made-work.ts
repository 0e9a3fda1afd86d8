import { firstWork } from '../../../src/components/trials/work.ts';
import type { Run, Trials } from '../../../src/core/trials/shapes.ts';

/** The boat of a newcomer, as the trials page begins with it. */
export function newTrials(): Trials {
  return firstWork().profile.trials;
}

export function madeRun(id: string, more: Partial<Run> = {}): Run {
  return {
    id,
    setup: 's1',
    load: {
      items: [{ id: 'a', kind: 'adult', mass: 80, station: 'helm', helm: true }],
      fill: 0.5,
      fillKnownBy: 'measured',
    },
    passes: [
      { over: 6.4, way: 'out' },
      { over: 6, way: 'back' },
    ],
    rpm: 4400,
    consumed: { kind: 'rate', rate: 0.0012 },
    ...more,
  };
}
