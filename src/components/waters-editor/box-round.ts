import { outlinesOf, type Sheet } from './sheet.ts';

/** Room left round what is drawn, share of its size. */
const ROOM = 0.05;

/** West, south, east and north round everything drawn, with some room; undefined while nothing has a size. */
export function boxRound(sheet: Sheet): readonly [number, number, number, number] | undefined {
  let [west, south, east, north] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const feature of sheet.features) {
    for (const { places } of outlinesOf(feature)) {
      for (const { lat, lon } of places) {
        west = Math.min(west, lon);
        east = Math.max(east, lon);
        south = Math.min(south, lat);
        north = Math.max(north, lat);
      }
    }
  }
  if (!(west < east && south < north)) return undefined;
  const [wide, high] = [(east - west) * ROOM, (north - south) * ROOM];
  const round = (degrees: number, limit: number) => Math.round(Math.min(limit, Math.max(-limit, degrees)) * 1e5) / 1e5;
  return [round(west - wide, 180), round(south - high, 90), round(east + wide, 180), round(north + high, 90)];
}
