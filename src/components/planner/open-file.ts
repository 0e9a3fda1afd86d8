import type { BoatProfile } from '../../core/trials/shapes.ts';
import type { Trip } from '../../core/trip/shapes.ts';
import type { Result } from '../../core/units/result.ts';
import { plannerWords } from '../words/en-planner.ts';

/** A file a planner can open: a whole trip, or a measured boat. */
export type Opened = { readonly trip: Trip } | { readonly profile: BoatProfile };

/** Reads the text of a file; what it is stands in it. */
export async function openText(text: string): Promise<Result<Opened>> {
  if (saysProfile(text)) {
    const { readProfile } = await import('../../core/files/profile-file.ts');
    const read = readProfile(text);
    return read.ok ? { ok: true, value: { profile: read.value } } : read;
  }
  const { readTripText } = await import('../../core/files/trip-schema.ts');
  const read = readTripText(text);
  return read.ok ? { ok: true, value: { trip: read.value } } : read;
}

/** Boat profile at an address of the site. */
export async function fetchProfile(address: string): Promise<Result<BoatProfile>> {
  try {
    const answer = await fetch(address);
    if (!answer.ok) return notFetched();
    const { readProfile } = await import('../../core/files/profile-file.ts');
    return readProfile(await answer.text());
  } catch {
    return notFetched();
  }
}

function notFetched(): Result<never> {
  return { ok: false, problems: [{ code: 'not-loaded', path: '', message: plannerWords.notLoaded }] };
}

function saysProfile(text: string): boolean {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null && 'format' in value;
  } catch {
    return false;
  }
}
