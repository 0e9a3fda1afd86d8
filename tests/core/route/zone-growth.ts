/**
 * Prints how the zone test grows: a 5,000-point route over 50,000 zone vertices against a 100-point route over 1,000.
 * Run it with Node; the budget is a ratio of 50, preparation included. Best of many runs, as others share the machine.
 */
import { prepareWaters, zonesAlong } from '../../../src/core/route/waters.ts';
import { circleWaters, meander } from './made-waters.ts';

function seconds(work: () => void): number {
  const start = performance.now();
  work();
  return (performance.now() - start) / 1000;
}

interface Case {
  readonly points: number;
  readonly islands: number;
  readonly verticesEach: number;
}

function cost({ points, islands, verticesEach }: Case, repeats: number): { prepare: number; along: number } {
  const file = circleWaters(islands, verticesEach);
  const route = meander(points);
  const prepare: number[] = [];
  const along: number[] = [];
  for (let repeat = 0; repeat < repeats; repeat++) {
    prepare.push(seconds(() => prepareWaters(file)));
    const waters = prepareWaters(file);
    along.push(
      seconds(() => {
        for (let leg = 1; leg < route.length; leg++) zonesAlong(waters, route[leg - 1]!, route[leg]!);
      }),
    );
  }
  return { prepare: Math.min(...prepare), along: Math.min(...along) };
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
  cost(small, 300);
  const few = cost(small, 300);
  const many = cost(large, 40);
  const along = many.along / few.along;
  const all = (many.along + many.prepare) / (few.along + few.prepare);
  const ms = (value: number) => `${(value * 1000).toFixed(2)} ms`;
  console.log(
    `${name}: legs ${ms(few.along)} -> ${ms(many.along)}, ratio ${along.toFixed(1)}; ` +
      `with preparing ${ms(few.prepare)} -> ${ms(many.prepare)}, ratio ${all.toFixed(1)}`,
  );
}
