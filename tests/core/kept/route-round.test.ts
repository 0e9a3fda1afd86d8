import { takeRound } from '../../../src/core/route/take-round.ts';
import { drawnLegOf, takeRouteRound } from '../../../src/core/route/take-round-route.ts';
import { prepareWaters } from '../../../src/core/route/waters.ts';
import { haven } from '../../trips.ts';
import { box, circleWaters, waters, zone } from '../route/made-waters.ts';
import { keeping } from './keeping.ts';

const islands = prepareWaters(circleWaters(9, 24));
const gate = prepareWaters(
  waters(
    [
      zone({ kind: 'land', name: 'South' }, box(0.04, 0, 0.05, 0.0495)),
      zone({ kind: 'land', name: 'North' }, box(0.04, 0.0505, 0.05, 0.1)),
      zone({ kind: 'shoal', name: 'Sill', dries_m: 0.5 }, box(0.06, 0, 0.065, 0.08)),
      zone({ kind: 'keep-out', name: 'Reserve', season: '03-01/08-31' }, box(0.07, 0.04, 0.08, 0.1)),
    ],
    [0, 0, 0.12, 0.1],
  ),
);
const spot = (lat: number, lon: number) => ({ lat, lon });
const summer = '2027-06-19T10:00:00Z';

keeping('route-round', {
  'round the island of the estuary': () =>
    takeRound(haven(), spot(46.0, -32.05), spot(45.99, -32.0), { clearance: 50, departure: summer }),
  'from slip to cove': () =>
    takeRound(haven(), spot(46.02739, -31.99008), spot(45.99679, -31.95121), { clearance: 30, departure: summer }),
  'well clear': () =>
    takeRound(haven(), spot(46.0, -32.05), spot(45.97, -31.94), { clearance: 200, departure: '2027-12-19' }),
  'among islands': () =>
    [20, 80, 400].map((clearance) => takeRound(islands, spot(46.01, -31.99), spot(46.19, -31.81), { clearance })),
  'through a gate': () =>
    [10, 60].flatMap((clearance) =>
      [summer, '2027-11-11'].map((departure) =>
        takeRound(gate, spot(0.02, 0.02), spot(0.06, 0.1), { clearance, departure }),
      ),
    ),
  'to places on land, too near, outside and too far north': () => [
    takeRound(gate, spot(0.02, 0.045), spot(0.06, 0.1), { clearance: 20 }),
    takeRound(gate, spot(0.02, 0.0398), spot(0.06, 0.1), { clearance: 100 }),
    takeRound(gate, spot(0.02, 0.02), spot(0.06, 0.5), { clearance: 20 }),
    takeRound(gate, spot(89, 0.02), spot(0.06, 0.1), { clearance: 20 }),
    takeRound(gate, spot(0.02, 0.02), spot(0.02, 0.02), { clearance: 20 }),
    takeRound(gate, spot(0.05, 0.062), spot(0.05, 0.1), { clearance: 20 }),
  ],
  'a route taken round': () =>
    (['loop', 'out-and-home', 'one-way'] as const).map((shape) =>
      takeRouteRound(
        {
          shape,
          speed: 5,
          waypoints: [
            { ...spot(46.0, -32.05), speed: 3 },
            spot(45.99, -32.0),
            spot(46.01, -31.975),
            { ...spot(46.02, -32.06), name: 'On land' },
          ],
        },
        haven(),
        { clearance: 40, departure: summer },
      ),
    ),
  'one leg of it': () =>
    takeRouteRound(
      { shape: 'loop', speed: 5, waypoints: [spot(46.0, -32.05), spot(45.99, -32.0), spot(46.01, -31.975)] },
      haven(),
      { clearance: 40, departure: summer },
      [2],
    ),
  'legs as drawn': () =>
    [0, 1, 2, 3, 4, 5].map((leg) =>
      drawnLegOf({ shape: 'out-and-home', speed: 5, waypoints: [spot(0, 0), spot(0, 1), spot(0, 2)] }, leg),
    ),
});
