import type { SeasonCard } from '../../core/hire/season-card.ts';
import { type WorkReport, workBeside } from '../work-beside.ts';
import { type CardWork, cardWork } from './card-work.ts';

/** Works out a card beside the page. Returns what stops it. */
export function makeCard(asked: CardWork, told: (report: WorkReport<SeasonCard>) => void): () => void {
  const worker = () => new Worker(new URL('./card-worker.ts', import.meta.url), { type: 'module' });
  return workBeside({ worker, asked, onPage: () => cardWork(asked) }, told);
}
