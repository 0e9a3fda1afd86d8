import type { Sampled } from '../../core/trip/risk.ts';
import type { Ask } from '../further/ask.ts';
import { type WorkReport, workBeside } from '../work-beside.ts';
import { playing } from './playing.ts';

/** Plays a trip over beside the page. Returns what stops it. */
export function play({ trip, file, standing }: Ask, told: (report: WorkReport<Sampled>) => void): () => void {
  const worker = () => new Worker(new URL('./play-worker.ts', import.meta.url), { type: 'module' });
  return workBeside({ worker, asked: { trip, file }, onPage: () => standing && playing(standing) }, told);
}
