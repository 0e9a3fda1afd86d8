import { parseJsonText } from '../../core/files/json-text.ts';
import { readWaters } from '../../core/files/waters-file.ts';
import type { Result } from '../../core/units/result.ts';
import { record, type Sheet } from './sheet.ts';

/** Characters of a file of local waters, as its reader takes them. */
const TEXT_LIMIT = 40e6;

/** Opens a file even with errors in its features, so that they can be mended here; only what is no GeoJSON is refused. */
export function openSheet(text: string): Result<Sheet> {
  const parsed = parseJsonText(text, TEXT_LIMIT);
  if (!parsed.ok) return parsed;
  const read = readWaters(parsed.value);
  if (read.ok) return { ok: true, value: read.value as unknown as Sheet };
  // About the whole file: too deep, too much, no list of features.
  const hopeless = read.problems.filter(({ code }) =>
    ['not-waters', 'too-deep', 'too-big', 'unsafe-key', 'unreadable'].includes(code),
  );
  if (hopeless.length > 0 || !record(parsed.value)) return { ok: false, problems: hopeless };
  return { ok: true, value: parsed.value as unknown as Sheet };
}

/** GeoJSON text of a sheet, one feature a line, so that two versions can be compared. */
export function sheetText(sheet: Sheet): string {
  const { features, ...members } = sheet;
  const head = JSON.stringify(members).slice(0, -1);
  return `${head},"features":[\n${features.map((feature) => JSON.stringify(feature)).join(',\n')}\n]}\n`;
}

/** Under which a sheet is saved: by its own name. */
export function sheetFileName({ name }: Sheet): string {
  const plain = typeof name === 'string' ? name.toLowerCase().replace(/[^a-z0-9]+/g, '-') : '';
  return `${plain.replace(/^-|-$/g, '') || 'waters'}.geojson`;
}
