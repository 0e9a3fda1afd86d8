import { suited } from '../../core/compare/suit.ts';
import type { Suited, Use } from '../../core/compare/suit-shapes.ts';
import * as catalogue from '../../core/files/catalogue.ts';
import type { PieceReport } from '../load-table/pieces.ts';

const told = (report: PieceReport<Suited>): void => globalThis.postMessage(report);

globalThis.addEventListener('message', ({ data }: MessageEvent<Use>) => {
  for (const piece of suited(data, catalogue)) told({ piece });
  told({ done: true });
});
