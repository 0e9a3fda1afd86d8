import { watersWords as words } from '../words/en-waters.ts';
import { describesKind } from './kinds.ts';
import { kindOf, nameOf, type Sheet } from './sheet.ts';

/** "3: Land, Ward Island". */
export function featureTitle(sheet: Sheet | undefined, index: number): string {
  const feature = sheet?.features[index];
  const name = nameOf(feature);
  return [words.feature(index + 1, kindTitle(kindOf(feature))), name].filter(Boolean).join(', ');
}

export function kindTitle(kind: string): string {
  return describesKind(kind) ? words.kinds[kind] : words.kinds.unknown;
}
