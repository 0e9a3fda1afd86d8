import { describe, expect, it } from 'vitest';
import { loadTable } from '../../../src/core/compare/load-table.ts';
import type { Cell } from '../../../src/core/compare/shapes.ts';
import type { Calibration, Hull } from '../../../src/core/craft/shapes.ts';
import { priorDeviations } from '../../../src/core/curve/factors.ts';
import { engines, hulls } from '../../../src/core/files/catalogue.ts';
import { columnOf, crewOf, hullOf, SETTING } from './boats.ts';

const catamaran = hullOf('catamaran-3-6');
const rows = (hull: Hull) => [1, 2, 3, 4].map((count) => crewOf(hull, count));

function column(engine: string, store: string, hull = catamaran, speed?: number): readonly Cell[] {
  const [first] = [columnOf('catamaran-3-6', engine, store)];
  return loadTable(hull, rows(hull), [first!], { ...SETTING, speed }).cells.map(([cell]) => cell!);
}

const codes = (cell: Cell) => cell.reasons.map(({ code }) => code);
const RANK = { planes: 0, marginal: 1, not: 2 } as const;

describe('a load table', () => {
  it('never has a fuller boat plane more surely, whatever shipped hull and engine', () => {
    for (const { id, hull } of hulls) {
      const columns = engines.map(({ id: engine, drive }) =>
        columnOf(id, engine, drive.kind === 'petrol' ? 'tank-12' : 'battery-3-nmc'),
      );
      const { cells } = loadTable(hull, rows(hull), columns, SETTING);
      for (let row = 1; row < cells.length; row++) {
        cells[row]!.forEach((cell, i) => {
          const lighter = cells[row - 1]![i]!;
          // Near certainty the doubt at displacement speed weighs on the lighter boat more: by less than a thousandth.
          expect(cell.planing.chance).toBeLessThanOrEqual(lighter.planing.chance + 0.001);
          expect(RANK[cell.planing.planes]).toBeGreaterThanOrEqual(RANK[lighter.planing.planes]);
        });
      }
    }
  });

  it('tells planing from not planing and from a toss-up', () => {
    expect(column('petrol-15hp-4s', 'tank-25').map(({ planing }) => planing.planes)).toEqual([
      'planes',
      'planes',
      'planes',
      'marginal',
    ]);
    expect(column('petrol-8hp-4s', 'tank-12').at(-1)!.planing.planes).toBe('not');
  });

  it('never lets a displacement hull plane, however strong the engine', () => {
    const launch = hullOf('launch-4-9');
    const { cells } = loadTable(
      launch,
      [crewOf(launch, 1)],
      [columnOf('launch-4-9', 'petrol-40hp-4s', 'tank-25')],
      SETTING,
    );
    expect(cells[0]![0]!.planing.planes).toBe('not');
    expect(cells[0]![0]!.cruiseRule).toBe('below-hull-speed');
    expect(codes(cells[0]![0]!)).toContain('over-plate-power');
  });

  it('sees an engine too strong and too heavy for the plate', () => {
    const small = hullOf('catamaran-3-6', { maxPower: 9000, maxEngineMass: 40 });
    const [cell] = column('petrol-15hp-4s', 'tank-25', small);
    expect(codes(cell!)).toEqual(expect.arrayContaining(['over-plate-power', 'over-plate-engine-mass']));
    expect(cell!.reasons.filter(({ level }) => level === 'no-go')).toHaveLength(2);
    expect(codes(column('petrol-8hp-4s', 'tank-25')[0]!)).not.toContain('over-plate-power');
  });

  it('says that nobody has read the plate, and then names no payload as allowed', () => {
    const { plate: _, ...bare } = catamaran;
    const [cell] = column('petrol-15hp-4s', 'tank-25', bare);
    expect(codes(cell!)).toContain('plate-unknown');
    expect(cell!.spare.plateKnown).toBe(false);
  });

  it('never has less range on a bigger tank', () => {
    const small = column('petrol-15hp-4s', 'tank-12', catamaran, 7.5);
    const big = column('petrol-15hp-4s', 'tank-25', catamaran, 7.5);
    const biggest = column('petrol-15hp-4s', 'tank-25-25', catamaran, 7.5);
    for (let i = 0; i < small.length; i++) {
      expect(big[i]!.cruise.range.median).toBeGreaterThan(small[i]!.cruise.range.median);
      expect(biggest[i]!.cruise.range.median).toBeGreaterThan(big[i]!.cruise.range.median);
    }
  });

  it('never goes farther with a heavier crew at the same speed, planing or not', () => {
    for (const speed of [2, 7.5]) {
      for (const count of [1, 2, 3, 4]) {
        const cells = [60, 75, 90, 105].map((mass) => {
          const row = crewOf(catamaran, count, mass);
          const setup = columnOf('catamaran-3-6', 'petrol-15hp-4s', 'tank-25');
          return loadTable(catamaran, [row], [setup], { ...SETTING, speed }).cells[0]![0]!;
        });
        for (let i = 1; i < cells.length; i++) {
          if (!cells[i]!.cruise.held) continue;
          expect(cells[i]!.cruise.range.median).toBeLessThan(cells[i - 1]!.cruise.range.median);
        }
      }
    }
  });

  it('says when a wished speed is not held', () => {
    const cells = column('petrol-8hp-4s', 'tank-12', catamaran, 7.5);
    expect(cells.map(({ cruise }) => cruise.held)).toEqual([true, false, false, false]);
    for (const { cruise, cruiseRule } of cells) expect([cruise.speed, cruiseRule]).toEqual([7.5, 'wished']);
  });

  it('keeps a third of the range where a third is kept, and gives bands round each figure', () => {
    for (const { cruise, topSpeed } of column('petrol-15hp-4s', 'tank-25')) {
      expect(cruise.rangeKept.median).toBeCloseTo((cruise.range.median * 2) / 3, 6);
      for (const band of [cruise.range, cruise.perMetre, topSpeed]) {
        expect(band.low).toBeLessThanOrEqual(band.median);
        expect(band.median).toBeLessThanOrEqual(band.high);
      }
      expect(cruise.perMetre.high / cruise.perMetre.median).toBeGreaterThan(1.15);
    }
  });

  it('narrows the band of a boat that was measured', () => {
    const setup = columnOf('catamaran-3-6', 'petrol-15hp-4s', 'tank-25');
    const sure = priorDeviations(setup.drive).map((deviation, i, all) =>
      all.map((_, j) => (i === j ? (deviation / 5) ** 2 : 0)),
    );
    const calibration: Calibration = {
      factors: [1, 1, 1, 0, 0, 1, 0],
      covariance: sure,
      runs: 12,
      tried: { mass: [200, 480], speed: [2, 10] },
    };
    const row = crewOf(catamaran, 2);
    const [plain, measured] = loadTable(catamaran, [row], [setup, { ...setup, id: 'measured', calibration }], SETTING)
      .cells[0]!;
    const wide = (cell: Cell) => cell.cruise.range.high / cell.cruise.range.low;
    expect(wide(measured!)).toBeLessThan(wide(plain!));
    expect(measured!.planing.chance).toBeGreaterThan(plain!.planing.chance);
  });

  it('has as much to spare as plate, floating and planing leave, and less with each person', () => {
    const cells = column('petrol-15hp-4s', 'tank-25');
    for (let i = 1; i < cells.length; i++) {
      expect(cells[i]!.spare.extra).toBeLessThan(cells[i - 1]!.spare.extra);
      expect(cells[i]!.spare.planing!).toBeLessThan(cells[i - 1]!.spare.planing!);
    }
    // Four toss up whether they plane: somebody would have to stay ashore for it to be sure.
    expect(cells[3]!.spare.planing!).toBeLessThan(0);
    expect(cells[3]!.spare.extra).toBeGreaterThan(0);
  });

  it('sees a short shaft on a high transom and a long one on a low transom', () => {
    const rib = hullOf('rib-4-7');
    const short = columnOf('rib-4-7', 'petrol-40hp-4s', 'tank-25-25');
    const long = { ...short, id: 'long', drive: { ...short.drive, shaft: 'long' as const } };
    const table = loadTable(rib, [crewOf(rib, 2)], [short, long], SETTING);
    expect(table.cells[0]!.map(({ notes }) => notes.filter(({ code }) => code.startsWith('leg')))).toEqual([
      [{ code: 'leg-high', by: expect.closeTo(0.127, 6) }],
      [],
    ]);
    const setup = columnOf('catamaran-3-6', 'petrol-15hp-4s', 'tank-25');
    const deep = { ...setup, id: 'deep', drive: { ...setup.drive, shaft: 'long' as const } };
    const [fits, drags] = loadTable(catamaran, [crewOf(catamaran, 2)], [setup, deep], { ...SETTING, speed: 7.5 })
      .cells[0]!;
    expect(drags!.notes).toContainEqual({ code: 'leg-deep', by: expect.closeTo(0.127, 6) });
    expect(drags!.cruise.perMetre.median).toBeGreaterThan(1.05 * fits!.cruise.perMetre.median);
  });

  it('sees a boat too low in the water', () => {
    const tender = hullOf('flat-floor-2-7');
    const { cells } = loadTable(
      tender,
      [crewOf(tender, 4)],
      [columnOf('flat-floor-2-7', 'electric-1-1kw', 'battery-1-0-nmc')],
      SETTING,
    );
    expect(codes(cells[0]![0]!)).toEqual(expect.arrayContaining(['over-plate-persons', 'low-in-water']));
  });
});
