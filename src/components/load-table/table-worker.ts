import type { Cell } from '../../core/compare/shapes.ts';
import type { PieceReport } from './pieces.ts';
import { type TableWork, tableWork } from './table-work.ts';

const told = (report: PieceReport<readonly Cell[]>): void => globalThis.postMessage(report);

globalThis.addEventListener('message', ({ data }: MessageEvent<TableWork>) => {
  for (const piece of tableWork(data)) told({ piece });
  told({ done: true });
});
