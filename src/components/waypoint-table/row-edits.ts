import { destination } from '../../core/route/distance.ts';
import type { Waypoint } from '../../core/route/shapes.ts';
import { changedAt, type EditKind, movedTo } from '../route-map/waypoint-edits.ts';
import type { Measures } from '../units/measures.ts';
import { legFrom, type Read, readBearing, readDistance, readPlace, readSpeed, readStop } from './typed-fields.ts';

export type FieldName = 'name' | 'place' | 'bearing' | 'distance' | 'stop' | 'speed';

export interface RowEdit {
  readonly waypoints: Waypoint[];
  readonly what: EditKind;
}

/** The edit that text typed into a field of row `index` stands for. */
export function rowEdit(
  waypoints: readonly Waypoint[],
  { index, field, text }: { index: number; field: FieldName; text: string },
  measures: Measures,
): Read<RowEdit> {
  const change = (fields: Partial<Waypoint>): RowEdit => ({
    waypoints: changedAt(waypoints, index, fields),
    what: 'changed',
  });
  const move = (at: { lat: number; lon: number }): RowEdit => ({
    waypoints: movedTo(waypoints, index, at),
    what: 'moved',
  });
  const waypoint = waypoints[index]!;
  const before = waypoints[index - 1] ?? waypoint;
  // Without a leg, as beyond the charts, bearing and distance start from here.
  const { distance, trackDeg } = legFrom(before, waypoint) ?? { distance: 0, trackDeg: 0 };
  switch (field) {
    case 'name':
      return { ok: true, value: change({ name: text.trim() || undefined }) };
    case 'stop':
      return mapped(readStop(text, measures), (stop) => change({ stop }));
    case 'speed':
      return mapped(readSpeed(text, measures), (speed) => change({ speed }));
    case 'place':
      return mapped(readPlace(text), move);
    case 'bearing':
      return mapped(readBearing(text, measures), (bearing) => move(destination(before, bearing, distance)));
    case 'distance':
      return mapped(readDistance(text, measures), (far) => move(destination(before, trackDeg, far)));
    default:
      return field satisfies never;
  }
}

function mapped<T, U>(read: Read<T>, to: (value: T) => U): Read<U> {
  return read.ok ? { ok: true, value: to(read.value) } : read;
}
