import type { WatersFile } from '../../core/route/shapes.ts';
import { prepareWaters } from '../../core/route/waters.ts';
import type { Trip } from '../../core/trip/shapes.ts';
import { standingOf } from '../../core/trip/standing.ts';
import type { PlayReport } from './player.ts';
import { playing } from './playing.ts';

interface Asked {
  readonly trip: Trip;
  readonly file: WatersFile | undefined;
}

const told = (report: PlayReport): void => globalThis.postMessage(report);

globalThis.addEventListener('message', ({ data }: MessageEvent<Asked>) => {
  const found = standingOf(data.trip, data.file && prepareWaters(data.file));
  if (!found.ok) return told({ kind: 'failed' });
  const work = playing(found.value);
  for (;;) {
    const { done, value } = work.next();
    if (done) return told({ kind: 'done', sampled: value });
    told({ kind: 'progress', share: value });
  }
});
