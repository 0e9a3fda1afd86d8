import type { Stretch } from '../../core/track/shapes.ts';

/** Which stretches cross land of the local waters that come with the site; none where those cannot be loaded. */
export async function overLand(stretches: readonly Stretch[]): Promise<readonly number[]> {
  const [{ fetchWaters, SHIPPED_WATERS }, { prepareWaters, zonesAlong }] = await Promise.all([
    import('../planner/fetch-waters.ts'),
    import('../../core/route/waters.ts'),
  ]);
  const file = await fetchWaters(SHIPPED_WATERS);
  if (!file) return [];
  const waters = prepareWaters(file);
  return stretches.flatMap(({ begin, finish }, i) =>
    zonesAlong(waters, begin, finish).crossings.some(({ kind }) => kind === 'land') ? [i] : [],
  );
}
