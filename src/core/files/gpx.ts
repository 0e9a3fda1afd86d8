import { SaxesParser } from 'saxes';
import type { Track, TrackNote } from '../track/shapes.ts';
import type { Result } from '../units/result.ts';
import { addPoint, emptyTrack, type RawTrack, trackOfPoints } from './gpx-track.ts';

/** Characters of a GPX file; ask a file's size in bytes before reading it. */
const GPX_LIMIT = 64e6;

export interface GpxFile {
  /** Each with at least one timed point. */
  readonly tracks: readonly Track[];
  /** What was dropped or looks wrong; everything sound is kept. */
  readonly notes: readonly TrackNote[];
}

/** Read between two reports of progress, in characters: a few milliseconds. */
const CHUNK = 1 << 17;
/** Elements inside one another; GPX with extensions needs about eight. */
const DEPTH = 64;
const NAME_LENGTH = 100;

/**
 * Reads the recorded tracks of GPX 1.0 or 1.1 text piece by piece and yields the share read, 0 to 1, after each; leave
 * off to cancel. `now`, s since 1970, is what times are held against. A file that breaks off keeps what came before.
 */
export function* readingGpx(text: string, now: number): Generator<number, Result<GpxFile>> {
  if (text.length > GPX_LIMIT) {
    const message = `The file is too large: at most ${GPX_LIMIT / 1e6} million characters are read`;
    return refusal('too-big', message, GPX_LIMIT);
  }
  if (text.trim() === '') return refusal('empty', 'The file is empty');
  const reader = new GpxReader();
  for (let at = 0; at < text.length && !reader.fault; at += CHUNK) {
    reader.write(text.slice(at, at + CHUNK));
    yield Math.min(1, (at + CHUNK) / text.length);
  }
  return reader.close(now);
}

/** Reads the recorded tracks of GPX text in one go. */
export function readGpx(text: string, now: number): Result<GpxFile> {
  const reading = readingGpx(text, now);
  for (;;) {
    const { done, value } = reading.next();
    if (done) return value;
  }
}

function refusal(code: string, message: string, limit?: number): Result<never> {
  return { ok: false, problems: [{ code, path: '', message, ...(limit !== undefined && { limit }) }] };
}

interface Fault {
  readonly code: 'doctype' | 'not-gpx' | 'broken';
  readonly line: number;
  readonly what: string;
}

/** Follows the elements gpx, trk, trkseg and trkpt; whatever else a file holds is passed over. */
class GpxReader {
  fault: Fault | undefined;
  readonly #parser = new SaxesParser();
  /** Local names down to the open element. */
  readonly #way: string[] = [];
  readonly #tracks: RawTrack[] = [];
  /** Waypoints and routes. */
  #others = 0;
  #point: { lat?: string; lon?: string; time?: string; line: number } | undefined;
  /** Text of an open element that is wanted, and how deep it stands; there may be further elements inside. */
  #text: string | undefined;
  #textDepth = 0;

  constructor() {
    this.#parser.on('doctype', () => this.#stop('doctype', 'it declares a document type'));
    this.#parser.on('error', ({ message }) => this.#stop('broken', message.replace(/^[\d:]*\s*|\.$/g, '')));
    this.#parser.on('opentag', ({ name, attributes }) => this.#opened(name, attributes));
    this.#parser.on('closetag', () => this.#closed());
    this.#parser.on('text', (text) => this.#read(text));
    this.#parser.on('cdata', (text) => this.#read(text));
  }

  write(text: string): void {
    this.#parser.write(text);
  }

  close(now: number): Result<GpxFile> {
    if (!this.fault) this.#parser.close();
    const { fault } = this;
    if (fault?.code === 'doctype') {
      const message = `The file is not read: ${fault.what} (line ${fault.line}), for which GPX has no use`;
      return refusal('doctype', message);
    }
    if (fault && this.#tracks.every(({ time }) => time.length === 0)) {
      return refusal('not-gpx', `This is not a GPX file: ${fault.what}, at line ${fault.line}`);
    }
    const read = this.#tracks.map((raw, index) => trackOfPoints(raw, `Track ${index + 1}`, now));
    const tracks = read.flatMap(({ track }) => track ?? []);
    if (tracks.length === 0) return this.#nothing();
    const notes = read.flatMap((each) => each.notes);
    if (fault) {
      const message = `The file is broken at line ${fault.line} (${fault.what}); what came before was kept`;
      notes.unshift({ code: 'broken-off', track: '', message, count: 1, line: fault.line });
    }
    return { ok: true, value: { tracks, notes } };
  }

  #nothing(): Result<never> {
    if (this.#tracks.some(({ faults }) => faults.has('no-time'))) {
      return refusal('no-times', 'No point of the file says when it was recorded, so nothing can be told of speeds');
    }
    if (this.#tracks.length > 0) return refusal('no-tracks', 'The file holds no track with a usable point');
    const message =
      this.#others > 0 ? 'The file holds waypoints or routes, but no recorded track' : 'The file holds no track';
    return refusal('no-tracks', message);
  }

  #stop(code: Fault['code'], what: string): void {
    // After an error the parser goes on as well as it can; only the first counts.
    this.fault ??= { code, what, line: this.#parser.line };
  }

  #opened(qualified: string, attributes: Readonly<Record<string, string>>): void {
    if (this.fault) return;
    const name = qualified.slice(qualified.indexOf(':') + 1);
    const depth = this.#way.push(name);
    if (depth === 1 && name !== 'gpx') this.#stop('not-gpx', `it begins with "${name.slice(0, 40)}"`);
    if (depth > DEPTH) this.#stop('broken', 'elements stand too deep inside one another');
    if (depth === 2) {
      if (name === 'trk') this.#tracks.push(emptyTrack());
      else if (name === 'rte' || name === 'wpt') this.#others++;
    } else if (depth === 3 && this.#inTrack()) {
      if (name === 'trkseg') this.#tracks.at(-1)!.segments++;
      else if (name === 'name') this.#begin(depth);
    } else if (depth === 4 && this.#inTrack() && this.#way[2] === 'trkseg' && name === 'trkpt') {
      this.#point = { lat: attributes.lat, lon: attributes.lon, line: this.#parser.line };
    } else if (depth === 5 && this.#point && name === 'time') {
      this.#begin(depth);
    }
  }

  #begin(depth: number): void {
    this.#text = '';
    this.#textDepth = depth;
  }

  #closed(): void {
    if (this.fault) return;
    const depth = this.#way.length;
    this.#way.pop();
    if (depth === 4 && this.#point) {
      this.#text = undefined;
      addPoint(this.#tracks.at(-1)!, this.#point);
      this.#point = undefined;
    } else if (this.#text !== undefined && depth === this.#textDepth) {
      if (this.#point) this.#point.time = this.#text;
      else this.#tracks.at(-1)!.name = this.#text;
      this.#text = undefined;
    }
  }

  #inTrack(): boolean {
    return this.#way[1] === 'trk';
  }

  #read(text: string): void {
    if (this.#text === undefined) return;
    // Nearly always a time in one piece.
    if (this.#text === '' && text.length <= NAME_LENGTH) this.#text = text;
    else this.#text = (this.#text + text.slice(0, NAME_LENGTH)).slice(0, NAME_LENGTH);
  }
}
