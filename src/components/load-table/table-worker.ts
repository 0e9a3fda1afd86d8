import type { Cell } from '../../core/compare/shapes.ts';
import { type Looked, type LookWork, lookWork } from './look-work.ts';
import type { PieceReport } from './pieces.ts';
import { type TableWork, tableWork } from './table-work.ts';

type Piece = readonly Cell[] | Looked;

const told = (report: PieceReport<Piece>): void => globalThis.postMessage(report);

globalThis.addEventListener('message', ({ data }: MessageEvent<TableWork | LookWork>) => {
  const found: Iterable<Piece> = 'look' in data ? lookWork(data) : tableWork(data);
  for (const piece of found) told({ piece });
  told({ done: true });
});
