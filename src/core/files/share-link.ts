import { deflateSync, Inflate } from 'fflate';
import type { Trip } from '../trip/shapes.ts';
import type { Problem, Result } from '../units/result.ts';
import { base64UrlOf, bytesOfBase64Url } from './base64-url.ts';
import { crc32 } from './crc32.ts';
import { parseJsonText } from './json-text.ts';
import { SHARE_DICTIONARY } from './share-dictionary.ts';
import { readDraft } from './trip-schema.ts';
import { withoutNames } from './without-names.ts';

/**
 * A whole trip in the fragment of an address, `#trip=1.` and base64url: JSON under raw deflate (RFC 1951) with a preset
 * dictionary, then the check sum of the JSON. A fragment is not sent to the server.
 */
const VERSION = 1;

/** Characters of a link that is written or read; some messengers cut far shorter ones. */
const LONGEST_LINK = 200_000;
/** Bytes of JSON a link may unfold to: those of the largest trip file. */
const MOST_BYTES = 2e6;
/** Bytes unfolded at a time. Deflate makes at most 1032 of one, so a hostile link is left after half a megabyte too much. */
const STEP = 512;
const SUM_BYTES = 4;

export interface SharedWith {
  /** Names of who and what is aboard, the trip's title and notes of trial runs go along. */
  readonly names?: boolean;
}

/** The address that opens a trip on the page at `base`; refused where the trip could not be opened again. */
export function writeShareLink(trip: Trip, base: string, { names = false }: SharedWith = {}): Result<string> {
  // Read first: only a sound trip is sent, and its fields come in the order the dictionary has them.
  const sound = readDraft(JSON.parse(JSON.stringify(names ? trip : withoutNames(trip))));
  if (!sound.ok) return sound;
  const json = new TextEncoder().encode(JSON.stringify(sound.value));
  if (json.length > MOST_BYTES) return refused(tooLong);
  const packed = deflateSync(json, { level: 9, dictionary: dictionary() });
  const bytes = new Uint8Array(packed.length + SUM_BYTES);
  bytes.set(packed);
  new DataView(bytes.buffer).setUint32(packed.length, crc32(json));
  const [page] = base.split('#', 1);
  const link = `${page}#trip=${VERSION}.${base64UrlOf(bytes)}`;
  return link.length > LONGEST_LINK ? refused(tooLong) : { ok: true, value: link };
}

/** Reads the trip out of a fragment, with or without the address before it. Names that were left out stay out. */
export function readShareLink(fragment: string): Result<Trip> {
  if (fragment.length > LONGEST_LINK) return refused(tooLong);
  const body = /(?:^|[#&])trip=([^&#]*)/.exec(fragment)?.[1];
  if (body === undefined) return refused(noTrip);
  // A link copied out of a sentence may bring its full stop along.
  const [, version, text] = /^(\d{1,6})\.([\w-]+)[\s.,;:!?)>\]}'"]*$/.exec(body) ?? [];
  if (version === undefined || text === undefined) return refused(damaged);
  if (Number(version) > VERSION) return refused(tooNew);
  if (Number(version) < VERSION) return refused(damaged);
  const bytes = bytesOfBase64Url(text);
  if (!bytes || bytes.length <= SUM_BYTES) return refused(damaged);
  const json = unfolded(bytes.subarray(0, -SUM_BYTES));
  if (!json) return refused(damaged);
  const sum = new DataView(bytes.buffer, bytes.byteOffset).getUint32(bytes.length - SUM_BYTES);
  if (crc32(json) !== sum) return refused(damaged);
  const parsed = parseJsonText(new TextDecoder().decode(json), MOST_BYTES);
  return parsed.ok ? readDraft(parsed.value) : refused(damaged);
}

function unfolded(packed: Uint8Array): Uint8Array | undefined {
  const parts: Uint8Array[] = [];
  let size = 0;
  try {
    const inflate = new Inflate({ dictionary: dictionary() }, (part) => {
      size += part.length;
      parts.push(part);
    });
    for (let at = 0; at < packed.length; at += STEP) {
      inflate.push(packed.subarray(at, at + STEP), at + STEP >= packed.length);
      if (size > MOST_BYTES) return undefined;
    }
  } catch {
    return undefined;
  }
  const all = new Uint8Array(size);
  let end = 0;
  for (const part of parts) {
    all.set(part, end);
    end += part.length;
  }
  return all;
}

function dictionary(): Uint8Array {
  return new TextEncoder().encode(SHARE_DICTIONARY);
}

function refused(problem: Problem): { ok: false; problems: Problem[] } {
  return { ok: false, problems: [problem] };
}

const noTrip: Problem = { code: 'no-trip-in-link', path: '', message: 'This address carries no trip' };
const damaged: Problem = {
  code: 'link-damaged',
  path: '',
  message: 'This link is damaged: part of it is missing or changed. Ask for it to be sent again, whole',
};
const tooNew: Problem = {
  code: 'link-too-new',
  path: '',
  message: 'This link was made by a newer version of this page. Reload the page while online, then open the link again',
};
const tooLong: Problem = {
  code: 'link-too-long',
  path: '',
  message: 'This trip is too long for a link. Send it as a file instead',
  limit: LONGEST_LINK,
};
