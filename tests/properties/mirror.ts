import type { Craft, Position } from '../../src/core/craft/shapes.ts';
import type { Trip } from '../../src/core/trip/shapes.ts';
import type { Conditions } from '../../src/core/water/shapes.ts';

/** Port and starboard changed over, of the boat and of all aboard. */
export function mirroredBoat(trip: Trip): Trip {
  const { hull, store } = trip.craft;
  const craft: Craft = {
    ...trip.craft,
    hull: {
      ...hull,
      centre: over(hull.centre),
      engine: over(hull.engine),
      stations: hull.stations.map(over),
    },
    store:
      store.kind === 'tank'
        ? { kind: 'tank', tanks: store.tanks.map((tank) => ({ ...tank, at: over(tank.at) })) }
        : { kind: 'battery', batteries: store.batteries.map((one) => ({ ...one, at: over(one.at) })) },
  };
  const items = trip.load.items.map((item) => ({ ...item, at: item.at && over(item.at) }));
  return { ...trip, craft, load: { ...trip.load, items } };
}

function over<P extends Position>(place: P): P {
  return { ...place, y: -place.y };
}

/** North and south changed over about the equator, and with them where wind and stream come from and go. */
export function mirroredNorth(trip: Trip): Trip {
  return mirrored(
    trip,
    ({ lat, lon }) => ({ lat: -lat, lon }),
    (deg) => (540 - deg) % 360,
  );
}

/** East and west changed over about a meridian. */
export function mirroredEast(trip: Trip, meridian: number): Trip {
  return mirrored(
    trip,
    ({ lat, lon }) => ({ lat, lon: 2 * meridian - lon }),
    (deg) => (360 - deg) % 360,
  );
}

interface Spot {
  readonly lat: number;
  readonly lon: number;
}

function mirrored(trip: Trip, place: (spot: Spot) => Spot, course: (deg: number) => number): Trip {
  const { wind, stream, streamPlaces } = trip.conditions;
  const conditions: Conditions = {
    ...trip.conditions,
    wind: windIn(wind, course),
    stream: typeof stream === 'object' && 'setDeg' in stream ? { ...stream, setDeg: course(stream.setDeg) } : stream,
    ...(streamPlaces && {
      streamPlaces: streamPlaces.map((one) => ({
        ...one,
        ...place(one),
        springs: one.springs.map((flow) => ({ ...flow, setDeg: course(flow.setDeg) })),
        neaps: one.neaps.map((flow) => ({ ...flow, setDeg: course(flow.setDeg) })),
      })),
    }),
  };
  const waypoints = trip.route.waypoints.map((spot) => ({ ...spot, ...place(spot) }));
  return { ...trip, route: { ...trip.route, waypoints }, conditions };
}

function windIn(wind: Conditions['wind'], course: (deg: number) => number): Conditions['wind'] {
  if (typeof wind !== 'object') return wind;
  if ('forecast' in wind) {
    return { ...wind, forecast: wind.forecast.map((hour) => ({ ...hour, fromDeg: course(hour.fromDeg) })) };
  }
  return { ...wind, fromDeg: course(wind.fromDeg) };
}
