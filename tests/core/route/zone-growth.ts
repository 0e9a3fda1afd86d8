/**
 * Prints how the zone test grows: a 5,000-point route over 50,000 zone vertices against a 100-point route over 1,000.
 * Run it with Node 24; the budget is a ratio of 50. Processor time, so that others on the machine count less.
 */
import { sailedLegs } from '../../../src/core/route/sailed-legs.ts';
import { splitLegs } from '../../../src/core/route/split-legs.ts';
import { prepareWaters, zonesAlong } from '../../../src/core/route/waters.ts';
import { circleWaters, meander } from './made-waters.ts';

interface Case {
  readonly points: number;
  readonly islands: number;
  readonly verticesEach: number;
}

const PARTS = ['prepare', 'zones', 'split'] as const;

/** Milliseconds of processor time of one run: the best of several batches. */
function cost(work: () => void, batch: number): number {
  let best = Infinity;
  for (let trial = 0; trial < 15; trial++) {
    const start = process.threadCpuUsage();
    for (let run = 0; run < batch; run++) work();
    const { user, system } = process.threadCpuUsage(start);
    best = Math.min(best, (user + system) / batch / 1000);
  }
  return best;
}

function costs({ points, islands, verticesEach }: Case, batch: number): Record<(typeof PARTS)[number], number> {
  const file = circleWaters(islands, verticesEach);
  const waypoints = meander(points);
  const waters = prepareWaters(file);
  const { legs } = sailedLegs({ shape: 'one-way', waypoints, speed: 5 });
  return {
    prepare: cost(() => prepareWaters(file), batch),
    zones: cost(() => {
      for (const { from, to } of legs) zonesAlong(waters, from, to);
    }, batch),
    split: cost(() => splitLegs(legs, waters), batch),
  };
}

const cases: [string, Case, Case][] = [
  [
    'the same 10 islands drawn finer',
    { points: 100, islands: 10, verticesEach: 100 },
    { points: 5000, islands: 10, verticesEach: 5000 },
  ],
  [
    'more islands of 20 vertices',
    { points: 100, islands: 50, verticesEach: 20 },
    { points: 5000, islands: 2500, verticesEach: 20 },
  ],
  ['one coast', { points: 100, islands: 1, verticesEach: 1000 }, { points: 5000, islands: 1, verticesEach: 50000 }],
];

for (const [name, small, large] of cases) {
  costs(small, 50);
  const few = costs(small, 200);
  const many = costs(large, 4);
  const told = PARTS.map((part) => {
    return `${part} ${few[part].toFixed(3)} -> ${many[part].toFixed(2)} ms, ${(many[part] / few[part]).toFixed(0)}x`;
  });
  const whole = (many.prepare + many.split) / (few.prepare + few.split);
  console.log(`${name}: ${told.join('; ')}; prepare and split together ${whole.toFixed(0)}x`);
}
