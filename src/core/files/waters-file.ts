import type { WatersFile } from '../route/shapes.ts';
import type { Problem, Result } from '../units/result.ts';
import { parseJsonText } from './json-text.ts';
import { plainProblem } from './plain-value.ts';
import { geometryFault, positionsIn } from './waters-geometry.ts';
import { KINDS, MEMBERS, propertyFaults } from './waters-properties.ts';

/** Characters of a file of local waters. */
const TEXT_LIMIT = 40e6;
const LIMITS = { depth: 16, entries: 5e6 };
/** Positions of all outlines and points together. */
const POSITIONS = 500_000;
/** Enough to mend a file by; a wrong export would repeat one problem for every feature. */
const PROBLEMS = 100;

/** Reads local waters from GeoJSON text. */
export function readWatersText(text: string): Result<WatersFile> {
  const parsed = parseJsonText(text, TEXT_LIMIT);
  return parsed.ok ? readWaters(parsed.value) : parsed;
}

/**
 * Checks local waters: GeoJSON by RFC 7946 with the kinds and properties described beside the shipped waters.
 * Further members and properties stay as they are. At most the first 100 problems are told.
 */
export function readWaters(value: unknown): Result<WatersFile> {
  const unfit = plainProblem(value, LIMITS);
  if (unfit) return { ok: false, problems: [unfit] };
  if (!record(value) || value.type !== 'FeatureCollection' || !Array.isArray(value.features)) {
    const message = 'These are not local waters: the file must be a GeoJSON FeatureCollection with a list of features';
    return { ok: false, problems: [{ code: 'not-waters', path: '', message }] };
  }
  const problems = [...collectionProblems(value)];
  let positions = 0;
  for (const [index, feature] of value.features.entries()) {
    if (problems.length >= PROBLEMS || positions > POSITIONS) break;
    const found = featureProblems(feature, index);
    problems.push(...found);
    if (found.length === 0) positions += positionsIn(feature.geometry.coordinates);
  }
  if (positions > POSITIONS) {
    const message = `The outlines have more than ${POSITIONS} positions in all; a coarser export will do`;
    problems.push({ code: 'too-big', path: 'features', message, limit: POSITIONS });
  }
  problems.push(...repeatedIds(value.features).slice(0, PROBLEMS));
  if (problems.length > 0) return { ok: false, problems: problems.slice(0, PROBLEMS) };
  return { ok: true, value: value as unknown as WatersFile };
}

function* collectionProblems(file: Readonly<Record<string, unknown>>): Generator<Problem> {
  for (const [field, rule] of Object.entries(MEMBERS)) {
    const wrong = file[field] === undefined ? undefined : rule.fault(file[field]);
    if (wrong) yield { code: 'invalid', path: field, message: `"${field}" of the waters ${wrong}` };
  }
  const { surveyed, validUntil } = file;
  if (typeof surveyed === 'string' && typeof validUntil === 'string' && validUntil < surveyed) {
    const message = `The last day (validUntil) must not be before the survey, ${surveyed}`;
    yield { code: 'too-small', path: 'validUntil', message };
  }
  const box = file.bbox === undefined ? 'sound' : boxFault(file.bbox);
  if (box !== 'sound') {
    const message = 'The box of the waters (bbox) must be four numbers in degrees: west, south, east, north';
    yield { code: box, path: 'bbox', message };
  }
  // RFC 7946 knows WGS 84 only; its predecessor let a file name another system.
  if (file.crs != null && !/CRS84|4326/.test(JSON.stringify(file.crs))) {
    const message = 'The waters must be in WGS 84 degrees; this file names another coordinate system';
    yield { code: 'wrong-system', path: 'crs', message };
  }
}

/** West may be greater than east, across the 180th meridian; with heights there are six numbers. */
function boxFault(box: unknown): 'sound' | 'invalid' | 'empty-box' {
  if (!Array.isArray(box) || (box.length !== 4 && box.length !== 6) || !box.every(Number.isFinite)) return 'invalid';
  const [west, south] = box;
  const [east, north] = box.slice(box.length / 2);
  const onGlobe = Math.max(Math.abs(west), Math.abs(east)) <= 180 && Math.max(Math.abs(south), Math.abs(north)) <= 90;
  if (!onGlobe) return 'invalid';
  return west !== east && south < north ? 'sound' : 'empty-box';
}

function featureProblems(feature: unknown, index: number): Problem[] {
  const place = `features.${index}`;
  const properties = record(feature) && record(feature.properties) ? feature.properties : {};
  const named = typeof properties.name === 'string' ? ` (${properties.name.slice(0, 60)})` : '';
  const problem = (code: string, path: string, message: string): Problem => ({
    code,
    path: path === '' ? place : `${place}.${path}`,
    message: `Feature ${index + 1}${named}: ${message}`,
  });
  if (!record(feature) || feature.type !== 'Feature')
    return [problem('wrong-type', '', 'it must be a GeoJSON Feature')];
  const kind = KINDS.get(properties.kind);
  if (!kind) {
    const known = [...KINDS.keys()].join(', ');
    return [problem('unknown-kind', 'properties.kind', `"kind" must be one of: ${known}`)];
  }
  const problems = propertyFaults(kind, properties).map(({ code, field, message }) =>
    problem(code, `properties.${field}`, message),
  );
  const fault = geometryFault(feature.geometry, kind.geometry);
  if (fault)
    problems.push(problem(fault.code, fault.path === '' ? 'geometry' : `geometry.${fault.path}`, fault.message));
  return problems;
}

function repeatedIds(features: readonly unknown[]): Problem[] {
  const seen = new Map<string, number>();
  return features.flatMap((feature, index) => {
    const properties = record(feature) && record(feature.properties) ? feature.properties : {};
    const { kind, id } = properties;
    if (typeof id !== 'string' || !KINDS.has(kind)) return [];
    const first = seen.get(`${kind} ${id}`);
    if (first === undefined) {
      seen.set(`${kind} ${id}`, index);
      return [];
    }
    const message = `Features ${first + 1} and ${index + 1} are both ${kind} ${JSON.stringify(id)}; an id stands once`;
    return [{ code: 'duplicate', path: `features.${index}.properties.id`, message }];
  });
}

function record(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
