import type { Hull, Position } from '../../core/craft/shapes.ts';

/**
 * The hull at another overall length or beam, m, all that goes with them scaled alike: wetted length, planing beam,
 * tubes, stations and balance. The engine stays at the transom and the mass as it is: it has its own field.
 */
export function resizedHull(hull: Hull, size: { length?: number; beam?: number }): Hull {
  const length = size.length ?? hull.length;
  const beam = size.beam ?? hull.beam;
  const along = length / hull.length;
  const across = beam / hull.beam;
  const moved = <P extends Position>(place: P): P => ({ ...place, x: place.x * along, y: place.y * across });
  const { tube } = hull;
  return {
    ...hull,
    length,
    beam,
    wettedLength: hull.wettedLength * along,
    planingBeam: hull.planingBeam * across,
    centre: moved(hull.centre),
    stations: hull.stations.map(moved),
    // Tubes keep their diameter: a wider boat has them farther apart.
    ...(tube && {
      tube: {
        ...tube,
        length: tube.length * along,
        spacing: Math.max(tube.spacing + (beam - hull.beam), tube.diameter),
      },
    }),
  };
}
