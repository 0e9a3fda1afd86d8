import type { LatLon, WatersFile } from '../../core/route/shapes.ts';
import { prepareWaters, zonesAlong } from '../../core/route/waters.ts';
import { fetchWaters, SHIPPED_WATERS } from '../planner/fetch-waters.ts';

interface Straight {
  readonly begin: LatLon;
  readonly finish: LatLon;
}

/** Which stretches cross land of the local waters that come with the site; none where those cannot be loaded. */
export async function overLand(stretches: readonly Straight[]): Promise<readonly number[]> {
  const file = await fetchWaters(SHIPPED_WATERS);
  return file ? landCrossed(stretches, file) : [];
}

export function landCrossed(stretches: readonly Straight[], file: WatersFile): readonly number[] {
  const waters = prepareWaters(file);
  return stretches.flatMap(({ begin, finish }, i) =>
    zonesAlong(waters, begin, finish).crossings.some(({ kind }) => kind === 'land') ? [i] : [],
  );
}
