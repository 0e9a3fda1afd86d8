import { nothing, type ReactiveController } from 'lit';
import { describe, expect, it } from 'vitest';
import { InTurns } from '../../src/components/in-turns.ts';
import { turn } from '../../src/components/turn.ts';

/** A long element of `parts()` parts, and how much of it shows at each picture. */
function longElement(parts: () => number) {
  let controller: ReactiveController | undefined;
  const pictures: number[] = [];
  const host = {
    addController: (added: ReactiveController) => {
      controller = added;
    },
    removeController: () => {},
    requestUpdate: () => draw(),
    updateComplete: Promise.resolve(true),
  };
  const turns = new InTurns(host, parts);
  function draw(): void {
    const shown = Array.from({ length: parts() }, (_, at) => turns.part(at, () => at));
    pictures.push(shown.filter((part) => part !== nothing).length);
    controller?.hostUpdated?.();
  }
  return { draw, pictures };
}

async function someTurns(count: number): Promise<void> {
  for (let i = 0; i < count; i++) await turn();
}

describe('InTurns', () => {
  it('shows the first part at once and each other in a turn of its own', async () => {
    const { draw, pictures } = longElement(() => 4);
    draw();
    expect(pictures).toEqual([1]);
    await someTurns(8);
    expect(pictures).toEqual([1, 2, 3, 4]);
  });

  it('hurries nothing when something else changes meanwhile', async () => {
    const { draw, pictures } = longElement(() => 3);
    draw();
    draw();
    draw();
    await someTurns(8);
    expect(pictures).toEqual([1, 1, 1, 2, 3]);
  });

  it('lets what is found later come in turns as well, and keeps what is there', async () => {
    let parts = 2;
    const { draw, pictures } = longElement(() => parts);
    draw();
    await someTurns(4);
    parts = 4;
    draw();
    await someTurns(6);
    expect(pictures).toEqual([1, 2, 2, 3, 4]);
  });
});
