import type { ReactiveControllerHost } from 'lit';
import { readWaters } from '../../core/files/waters-file.ts';
import type { ChartDoubt } from '../../core/route/chart-doubts.ts';
import type { WatersFile } from '../../core/route/shapes.ts';
import type { Problem } from '../../core/units/result.ts';
import { whenIdle } from '../planner/when-idle.ts';
import { drawable } from './look-over.ts';
import type { Sheet } from './sheet.ts';

/** A sheet read as any door would read it; doubts are looked for when there is time. */
export class SheetLook {
  readonly #host: ReactiveControllerHost;
  problems: readonly Problem[] = [];
  /** Undefined while there are errors. */
  waters: WatersFile | undefined;
  /** What of it can be drawn. */
  shown: WatersFile | undefined;
  /** Undefined until they have been looked for. */
  doubts: readonly ChartDoubt[] | undefined;
  #newest: Sheet | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
  }

  look(sheet: Sheet): void {
    this.#newest = sheet;
    const read = readWaters(sheet);
    const empty = sheet.features.length === 0;
    this.problems = read.ok ? [] : read.problems;
    this.waters = read.ok ? read.value : undefined;
    this.shown = empty ? undefined : read.ok ? read.value : drawable(sheet, read.problems);
    this.doubts = undefined;
    const { waters } = this;
    if (!waters || empty) return;
    whenIdle(async () => {
      const { chartDoubts } = await import('../../core/route/chart-doubts.ts');
      if (sheet !== this.#newest) return;
      this.doubts = chartDoubts(waters);
      this.#host.requestUpdate();
    });
  }
}
