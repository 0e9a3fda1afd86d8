import { readGpx } from '../../src/core/files/gpx.ts';
import { gpxOfTracks } from '../../src/core/files/gpx-writer.ts';
import { cleanTrack } from '../../src/core/track/clean-track.ts';
import { pairPasses } from '../../src/core/track/pair-passes.ts';
import { steadyStretches } from '../../src/core/track/steady-stretches.ts';
import { recorded } from '../core/track/made-tracks.ts';
import { kept } from './cost.ts';

/** s between fixes: 100,000 of them are twelve hours. */
const EVERY = 0.432;

/** From the text of a GPX file with about so many points to its passes, paired. */
export function trackDay(points: number): () => void {
  const parts = Array.from({ length: Math.round((points * EVERY) / 180) }, (_, part) => ({
    seconds: 180,
    speed: 3 + ((part * 37) % 60) / 10,
    headingDeg: (part * 90) % 360,
    change: 10,
  }));
  const track = recorded(parts, { every: EVERY, noise: 1 });
  const text = gpxOfTracks([track]);
  const now = track.points.at(-1)!.time;
  return () => {
    const read = readGpx(text, now);
    if (!read.ok) return;
    for (const each of read.value.tracks) {
      const { groups, alone } = pairPasses(steadyStretches(cleanTrack(each).track));
      kept.sum += groups.length + alone.length;
    }
  };
}
