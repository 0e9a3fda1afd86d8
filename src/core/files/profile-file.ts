import * as v from 'valibot';
import type { BoatProfile } from '../trials/shapes.ts';
import type { Problem, Result } from '../units/result.ts';
import { parseJsonText } from './json-text.ts';
import { plainProblem } from './plain-value.ts';
import type { Same } from './same-shape.ts';
import { withoutSchemaName } from './schema-name.ts';
import { id, text } from './schema-parts.ts';
import { trialsSchema } from './trials-schema.ts';
import { trialsContradictions } from './trip-contradictions.ts';
import { problemOf } from './trip-words.ts';

const TEXT_LIMIT = 4e6;
const LIMITS = { depth: 16, entries: 200_000 };

export const profileSchema = v.strictObject({
  format: v.literal('homeleg-profile'),
  version: v.literal(1),
  name: text,
  usual: id,
  trials: trialsSchema,
});

/** BoatProfile while schema and shape agree, otherwise never, which does not compile below. */
type AgreedProfile = Same<BoatProfile, v.InferOutput<typeof profileSchema>> extends true ? BoatProfile : never;

/**
 * Reads a measured boat from JSON text of at most 4 million characters. It holds runs, no factors: whatever calibration
 * somebody writes into it is an unknown field.
 */
export function readProfile(text: string): Result<BoatProfile> {
  const parsed = parseJsonText(text, TEXT_LIMIT);
  if (!parsed.ok) return parsed;
  const value = parsed.value;
  const unfit = plainProblem(value, LIMITS) ?? formatProblem(value);
  if (unfit) return { ok: false, problems: [unfit] };
  const found = v.safeParse(profileSchema, withoutSchemaName(value), { message: '' });
  if (!found.success) return { ok: false, problems: found.issues.map(problemOf) };
  const profile: AgreedProfile = found.output;
  const problems = trialsContradictions(profile.trials, 'trials');
  if (!profile.trials.setups.some((setup) => setup.id === profile.usual)) {
    const message = `The usual setup ${JSON.stringify(profile.usual)} is not among those tried`;
    problems.push({ code: 'no-such-setup', path: 'usual', message });
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: profile };
}

/** JSON text that `readProfile` reads back to the same profile. */
export function writeProfile(profile: BoatProfile): string {
  return `${JSON.stringify(profile, null, 2)}\n`;
}

function formatProblem(value: unknown): Problem | undefined {
  if (typeof value !== 'object' || value === null || !('format' in value) || value.format !== 'homeleg-profile') {
    const message = 'This is not a boat profile: its format is not "homeleg-profile"';
    return { code: 'not-a-profile', path: '', message };
  }
  const version = 'version' in value ? value.version : undefined;
  if (version === 1) return undefined;
  const given = typeof version === 'number' ? `version ${version}` : 'an unknown version';
  const message = `This boat profile is of ${given}; only version 1 can be read here. A newer page may read it`;
  return { code: 'unknown-version', path: 'version', message };
}
