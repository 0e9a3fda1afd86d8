import { keeping } from './keeping.ts';
import { madeTrips } from './made-trips.ts';
import { slowFigures } from './slow-figures.ts';

keeping(
  'trip-whole',
  Object.fromEntries(Object.entries(madeTrips).map(([name, trip]) => [name, () => slowFigures(trip)])),
);
