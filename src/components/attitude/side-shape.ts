import { ends, inflatable, tubeDiameter } from '../../core/craft/plan-form.ts';
import type { Hull } from '../../core/craft/shapes.ts';

/** m: x forward of the aft end of the bottom, z above the keel. */
export interface SidePoint {
  readonly x: number;
  readonly z: number;
}

/** The boat from the side as closed rings, m. */
export interface SideShape {
  readonly hull: readonly SidePoint[];
  /** Line between tube or topside and bottom. */
  readonly line: readonly SidePoint[];
  /** Down to the propeller. */
  readonly engine: readonly SidePoint[];
  readonly leg: readonly SidePoint[];
  readonly bow: number;
  readonly aft: number;
  readonly top: number;
}

/** Height of the side where the record gives none, m, and how far the bow rises over it, of the length. */
const SIDE = { height: 0.45, rise: 0.055 };
const POINTS = 14;

/** Side view from the record; sheer and bow are drawn by eye for the type. */
export function sideShape(hull: Hull): SideShape {
  const { aft, bow } = ends(hull);
  const tubes = inflatable(hull.form);
  const side = tubes ? tubeDiameter(hull) : (hull.transomHeight ?? SIDE.height) + 0.1;
  const low = tubes && hull.form === 'rib' ? Math.max((hull.transomHeight ?? SIDE.height) - side, 0) : 0;
  const shoulder = 0.58 * bow;
  const rise = SIDE.rise * hull.length;
  const bent = (x: number): number => Math.max(0, (x - shoulder) / (bow - shoulder));
  const sheer = (x: number): number => low + side + rise * bent(x) ** 1.6;
  const keel = (x: number): number => (sheer(bow) - 0.25 * side) * bent(x) ** (tubes ? 2.4 : 3.4);
  const xs = Array.from({ length: POINTS + 1 }, (_, i) => shoulder + ((bow - shoulder) * i) / POINTS);
  const transom = hull.transomHeight ?? side;
  const bottom = [{ x: 0, z: 0 }, ...xs.map((x) => ({ x, z: keel(x) }))];
  const topside = [...xs].reverse().map((x) => ({ x, z: sheer(x) }));
  const end = tubes
    ? [
        { x: aft + 0.3 * side, z: low + side },
        { x: aft, z: low + 0.62 * side },
        { x: aft + 0.2 * side, z: low + 0.1 * side },
      ]
    : [{ x: 0, z: transom }];
  const x = hull.engine.x;
  const { z = transom } = hull.engine;
  return {
    hull: [...bottom, ...topside, ...end],
    line: tubes
      ? [{ x: aft + 0.1 * side, z: low + 0.5 * side }, ...xs.map((at) => ({ x: at, z: (keel(at) + sheer(at)) / 2 }))]
      : [{ x: 0, z: 0.4 * transom }, ...xs.map((at) => ({ x: at, z: 0.4 * sheer(at) + 0.6 * keel(at) }))],
    engine: [
      { x: x + 0.12, z: transom - 0.04 },
      { x: x + 0.16, z: z + 0.16 },
      { x: x + 0.05, z: z + 0.34 },
      { x: x - 0.22, z: z + 0.3 },
      { x: x - 0.26, z: z + 0.06 },
      { x: x - 0.1, z: transom - 0.06 },
    ],
    leg: [
      { x: x + 0.02, z: transom - 0.05 },
      { x: x - 0.12, z: transom - 0.05 },
      { x: x - 0.16, z: -0.16 },
      { x: x - 0.08, z: -0.24 },
      { x: x - 0.02, z: -0.02 },
    ],
    bow,
    aft: Math.min(aft, x - 0.3),
    top: sheer(bow),
  };
}
