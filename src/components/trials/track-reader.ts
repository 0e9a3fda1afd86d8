import type { Stretch, TrackNote } from '../../core/track/shapes.ts';
import type { Problem } from '../../core/units/result.ts';
import type { OpenTrack } from './track-work.ts';

/** What came of the files: the tracks with their steady stretches, and what could not be used. */
export interface TracksRead {
  readonly tracks: readonly (OpenTrack & { readonly stretches: readonly Stretch[] })[];
  /** Of whole files. */
  readonly refused: readonly { readonly file: string; readonly problems: readonly Problem[] }[];
}

export interface TextFile {
  readonly name: string;
  text(): Promise<string>;
}

/** ms of work between two looks at the page. */
const SLICE = 24;

/**
 * Reads GPX files and finds their steady stretches bit by bit, so that the page stays alive. `told` hears of progress,
 * 0 to 1, with what is being done; undefined comes back where `wanted` no longer says so.
 */
export async function readTracks(
  files: readonly TextFile[],
  now: number,
  told: (share: number, file: string) => void,
  wanted: () => boolean,
): Promise<TracksRead | undefined> {
  const [{ readingGpx }, { cleanTrack }, { findingStretches }, { measuredTrack }] = await Promise.all([
    import('../../core/files/gpx.ts'),
    import('../../core/track/clean-track.ts'),
    import('../../core/track/steady-stretches.ts'),
    import('../../core/track/measured-track.ts'),
  ]);
  const tracks: (OpenTrack & { stretches: readonly Stretch[] })[] = [];
  const refused: { file: string; problems: readonly Problem[] }[] = [];
  for (const [index, file] of files.entries()) {
    const part = (share: number) => told((index + share) / files.length, file.name);
    const read = await inSlices(readingGpx(await file.text(), now), (share) => part(share * 0.6), wanted);
    if (read === undefined) return undefined;
    if (!read.ok) {
      refused.push({ file: file.name, problems: read.problems });
      continue;
    }
    for (const raw of read.value.tracks) {
      const { track, notes } = cleanTrack(raw);
      const stretches = await inSlices(findingStretches(track), (share) => part(0.6 + share * 0.4), wanted);
      if (stretches === undefined) return undefined;
      const own = read.value.notes.filter((note: TrackNote) => note.track === raw.name || note.track === '');
      const id = `t${tracks.length + 1}`;
      tracks.push({ id, track, measured: measuredTrack(track), notes: [...own, ...notes], stretches });
    }
  }
  return { tracks, refused };
}

/** Runs a generator to its end with a rest for the page every few milliseconds. */
async function inSlices<T>(
  work: Generator<number, T>,
  told: (share: number) => void,
  wanted: () => boolean,
): Promise<T | undefined> {
  let since = performance.now();
  for (;;) {
    const { done, value } = work.next();
    if (done) return value;
    if (performance.now() - since < SLICE) continue;
    told(value);
    await rest();
    if (!wanted()) return undefined;
    since = performance.now();
  }
}

/** After whatever the page has to do now. */
function rest(): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, 0);
  });
}
