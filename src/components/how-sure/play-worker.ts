import type { WatersFile } from '../../core/route/shapes.ts';
import { prepareWaters } from '../../core/route/waters.ts';
import type { Trip } from '../../core/trip/shapes.ts';
import { standingOf } from '../../core/trip/standing.ts';
import { tellAll } from '../work-beside.ts';
import { playing } from './playing.ts';

interface Asked {
  readonly trip: Trip;
  readonly file: WatersFile | undefined;
}

globalThis.addEventListener('message', ({ data }: MessageEvent<Asked>) => {
  const found = standingOf(data.trip, data.file && prepareWaters(data.file));
  if (found.ok) tellAll(playing(found.value));
  else globalThis.postMessage({ kind: 'failed' });
});
