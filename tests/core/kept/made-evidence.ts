import profile from '../../../shared/trials-demo/sample-boat.json' with { type: 'json' };
import type { Craft } from '../../../src/core/craft/shapes.ts';
import { craftFrom } from '../../../src/core/files/catalogue.ts';
import type { BoatProfile, Refill, Run, Trials } from '../../../src/core/trials/shapes.ts';
import { crew, two } from './made-trips.ts';

/** The invented boat of the demonstration with its trials. */
export const sample = (profile as unknown as BoatProfile).trials;

const petrol = craftFrom('catamaran-3-6', 'petrol-15hp-4s', 'tank-12-can-5');
const electric = craftFrom('launch-4-9', 'electric-2-2kw', 'battery-5-lfp');

const alone = crew(two.slice(0, 1), { fill: 0.6 });
const laden = crew([...two, ['adult', 88, 'seat-aft-port'], ['adult', 79, 'seat-fore-starboard']], { fill: 0.9 });

function run(id: string, over: readonly number[], more: Partial<Run>): Run {
  const passes = over.map((speed, i) => ({ over: speed, way: i % 2 === 0 ? ('out' as const) : ('back' as const) }));
  return { id, setup: 'usual', load: alone, passes, day: '2026-05-03', ...more };
}

function evidence(
  craft: Craft,
  runs: readonly Run[],
  refills: readonly Refill[] = [],
  more: Partial<Trials> = {},
): Trials {
  const setups = [{ id: 'usual', drive: craft.drive, store: craft.store }];
  return { hull: craft.hull, water: 'sea', setups, runs, refills, ...more };
}

const rate = (value: number) => ({ kind: 'rate', rate: value }) as const;
const amount = (value: number, seconds: number) => ({ kind: 'amount', amount: value, seconds }) as const;

const petrolRuns: readonly Run[] = [
  run('slow', [1.9, 1.5, 1.8], { rpm: 1900, consumed: rate(0.000135) }),
  run('hump', [4.1, 3.9], { rpm: 3900, consumed: amount(0.19, 380), load: laden, day: '2026-05-10' }),
  run('plane', [7.3, 6.9, 7.2, 7], { rpm: 4400, consumed: rate(0.00068), wind: { speed: 4, offBowDeg: 30 } }),
  run('plane, laden', [6.7], { rpm: 4900, consumed: rate(0.00091), load: laden, stream: 0.3, waveHeight: 0.15 }),
  run('all it has', [9.4, 9.1], { rpm: 5600, consumed: rate(0.00126), fullThrottle: true, consumedError: 0.03 }),
  run('one way alone', [6.2], { consumed: rate(0.0006), wind: { speed: 6, offBowDeg: 160 } }),
];
const electricRuns: readonly Run[] = [
  run('quay', [1.2, 1], { rpm: 420, consumed: rate(150) }),
  run('usual', [2.1, 1.7], { rpm: 690, consumed: rate(610), day: '2026-06-02' }),
  run('fast', [2.6, 2.5], { rpm: 940, consumed: rate(1500), load: laden }),
  run('left out', [2.2, 2.2], { rpm: 700, consumed: rate(400), leftOut: true }),
];

const dayOut: Refill = {
  id: 'day out',
  setup: 'usual',
  load: laden,
  spent: [
    { speed: 0, seconds: 900 },
    { speed: 1.8, seconds: 2500 },
    { speed: 6.8, seconds: 2400 },
  ],
  amount: 2.4,
  waveHeight: 0.1,
  day: '2026-05-20',
};

const prop = { ...petrol.drive, propeller: { ...petrol.drive.propeller, pitch: 0.2159 } };

export const evidences: Readonly<Record<string, Trials>> = {
  'the boat of the demonstration': sample,
  'no run at all': evidence(petrol, []),
  'one run': evidence(petrol, petrolRuns.slice(2, 3)),
  'two runs that disagree': evidence(petrol, [
    petrolRuns[2]!,
    { ...petrolRuns[2]!, id: 'thirsty', consumed: rate(0.0019) },
  ]),
  'six runs and a refill': evidence(petrol, petrolRuns, [dayOut], { fouling: 'slime' }),
  'six runs, one of which contradicts the others': evidence(petrol, [
    ...petrolRuns,
    run('misread', [7.1, 7], { rpm: 4400, consumed: rate(0.0021) }),
  ]),
  'two propellers and two engines': evidence(
    petrol,
    [
      ...petrolRuns.slice(0, 3),
      run('finer', [7.3, 7], { setup: 'fine', rpm: 5000, consumed: rate(0.0007) }),
      run('finer, full', [8.7, 8.5], { setup: 'fine', rpm: 5900, consumed: rate(0.0013), fullThrottle: true }),
      run('small engine', [2.4, 2.2], { setup: 'small', rpm: 4300, consumed: rate(0.00034) }),
    ],
    [],
    {
      setups: [
        { id: 'usual', drive: petrol.drive, store: petrol.store },
        { id: 'fine', drive: prop, store: petrol.store },
        { id: 'small', drive: craftFrom('catamaran-3-6', 'petrol-4hp-4s', 'tank-12').drive, store: petrol.store },
      ],
    },
  ),
  'an electric launch charged at the socket': evidence(
    electric,
    electricRuns,
    [
      {
        ...dayOut,
        amount: 9_400_000,
        readAt: 'socket',
        spent: [
          { speed: 0, seconds: 600 },
          { speed: 2.1, seconds: 9000 },
        ],
      },
      {
        ...dayOut,
        id: 'by monitor',
        amount: 5_100_000,
        readAt: 'battery',
        consumedError: 0.04,
        spent: [{ speed: 1.9, seconds: 8000 }],
      },
    ],
    { water: 'fresh' },
  ),
  'faster than the model goes': evidence(electric, [
    run('towed', [9, 9], { rpm: 1200, consumed: rate(1500) }),
    electricRuns[1]!,
  ]),
  'nothing read': evidence(petrol, [run('only passes', [5, 5], {}), petrolRuns[1]!, petrolRuns[0]!]),
  'all with one load at one speed': evidence(petrol, [
    run('a', [7, 7], { rpm: 4400, consumed: rate(0.00068) }),
    run('b', [7.1, 6.9], { rpm: 4450, consumed: rate(0.0007) }),
    run('c', [6.9, 6.9], { rpm: 4350, consumed: rate(0.00066) }),
  ]),
};
export { petrol };
export const loads = { alone, laden };
