import { readWaters } from '../../core/files/waters-file.ts';
import type { WatersFile } from '../../core/route/shapes.ts';
import type { Problem } from '../../core/units/result.ts';
import type { Sheet } from './sheet.ts';

/** The sheet without its wrong features, for the map; with the place of each that is left. */
export function drawable(sheet: Sheet, problems: readonly Problem[]): WatersFile {
  const wrong = new Set(problems.map(featureAt));
  const members = new Set(problems.filter(({ path }) => !path.startsWith('features')).map(({ path }) => path));
  const kept = Object.entries(sheet).filter(([member]) => !members.has(member));
  const features = sheet.features.filter((_, index) => !wrong.has(index));
  const read = readWaters({ ...Object.fromEntries(kept), features });
  return read.ok ? read.value : { type: 'FeatureCollection', features: [] };
}

/** Which feature a problem is about. */
export function featureAt({ path }: Problem): number | undefined {
  const [, index] = /^features\.(\d+)(?:\.|$)/.exec(path) ?? [];
  return index === undefined ? undefined : Number(index);
}
