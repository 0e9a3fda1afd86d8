import { describe, expect, it } from 'vitest';
import demo from '../../../shared/craft/hire-fleet.json' with { type: 'json' };
import profile from '../../../shared/trials-demo/sample-boat.json' with { type: 'json' };
import { readDeskFile, readHire, readMorning, writeDeskFile } from '../../../src/core/files/desk-file.ts';
import { readFleet, readFleetText, writeFleet } from '../../../src/core/files/fleet-file.ts';
import type { Fleet } from '../../../src/core/hire/shapes.ts';
import { aHire, aMorning } from '../hire/examples.ts';

const changed = (change: (fleet: ReturnType<typeof clone>) => void) => {
  const fleet = clone();
  change(fleet);
  return readFleet(fleet);
};
const clone = () => JSON.parse(JSON.stringify(demo));
const problems = (read: ReturnType<typeof readFleet>) =>
  read.ok ? [] : read.problems.map(({ path, message }) => `${path}: ${message}`);

describe('readFleet', () => {
  it('takes the fleet that comes with the site, and gives it back the same', () => {
    const read = readFleet(demo);
    expect(problems(read)).toEqual([]);
    expect(readFleetText(writeFleet(demo as unknown as Fleet))).toEqual(read);
  });

  it('names the place in the file of a wrong figure, and the boat', () => {
    expect(problems(changed((fleet) => (fleet.boats[1].plate.maxLoad = 'heavy')))).toEqual([
      'boats.1.plate.maxLoad: Boat 2 (Inflatable catamaran, 15 hp): The greatest load of the plate must be a number',
    ]);
  });

  it('takes a usual speed from 0.3 to 25 m/s', () => {
    const told = (speed: number) => problems(changed((fleet) => (fleet.boats[0].speed = speed))).length;
    expect([0.29, 0.3, 25, 25.1].map(told)).toEqual([1, 0, 0, 1]);
  });

  it('names a hull that the catalogue does not have', () => {
    const [found] = problems(changed((fleet) => (fleet.boats[0].hullId = 'ark')));
    expect(found).toMatch(/^boats\.0\.hullId: .*is not in the catalogue$/);
  });

  it('wants to know who answers for it, since when and until when', () => {
    for (const field of ['answers', 'surveyed', 'until']) {
      const found = problems(changed((fleet) => delete fleet[field]));
      expect(found).toEqual([expect.stringMatching(new RegExp(`^${field}: .*is missing$`))]);
    }
    expect(problems(changed((fleet) => (fleet.until = '2027-02-30')))).toHaveLength(1);
    expect(problems(changed((fleet) => (fleet.until = '2020-01-01')))[0]).toContain('before the survey');
  });

  it('does not take two boats of one id, a field it does not know, or another kind of file', () => {
    expect(problems(changed((fleet) => (fleet.boats[1].id = fleet.boats[0].id)))[0]).toContain('Two boats');
    expect(problems(changed((fleet) => (fleet.boats[0].colour = 'red')))[0]).toContain('"colour"');
    expect(problems(changed((fleet) => (fleet.format = 'list')))[0]).toContain('not the fleet');
    expect(problems(changed((fleet) => (fleet.version = 2)))[0]).toContain('version 2');
  });

  it('takes a boat measured elsewhere with its profile, and says what is wrong in one', () => {
    const { hullId: _, engineId: __, storeId: ___, ...plain } = clone().boats[0];
    expect(problems(changed((fleet) => (fleet.boats[0] = { ...plain, profile })))).toEqual([]);
    const broken = JSON.parse(JSON.stringify({ ...plain, profile }));
    broken.profile.trials.runs[0].passes = 'many';
    const [found] = problems(changed((fleet) => (fleet.boats[0] = broken)));
    expect(found).toMatch(/^boats\.0\.profile\.trials\.runs\.0\.passes: Boat 1/);
  });

  it('takes waters of its own, and says where they are wrong', () => {
    const waters = { type: 'FeatureCollection', name: 'Pond', features: [] };
    expect(problems(changed((fleet) => (fleet.localWaters = waters)))).toEqual([]);
    const wrong = { type: 'FeatureCollection', features: [{ type: 'Feature' }] };
    expect(problems(changed((fleet) => (fleet.localWaters = wrong)))[0]).toMatch(/^localWaters\.features\.0/);
  });

  it('only takes an address of the web for the site', () => {
    expect(problems(changed((fleet) => (fleet.site = 'https://desk.example/')))).toEqual([]);
    expect(problems(changed((fleet) => (fleet.site = 'javascript:alert(1)')))).toHaveLength(1);
  });
});

describe('readDeskFile', () => {
  const desk = {
    fleet: readFleet(demo).ok ? (demo as unknown as Fleet) : undefined,
    morning: aMorning(),
    hires: [aHire(), aHire({ id: 'h2', leftAt: 1, due: 2, returnedAt: 3, back: { amount: 2, used: 'as-planned' } })],
    fuelNotes: [],
  };

  it('gives back all that was written', () => {
    const read = readDeskFile(writeDeskFile(desk));
    expect(read.ok && read.value).toEqual({ format: 'homeleg-desk', version: 1, ...desk });
  });

  it('takes nothing of a file in which one thing is wrong, and says where', () => {
    const text = writeDeskFile({ ...desk, hires: [aHire({ due: Number.NaN })] });
    const read = readDeskFile(text);
    expect(read.ok).toBe(false);
    expect(!read.ok && read.problems[0]?.path).toBe('hires.0.due');
  });

  it('checks single records as they come out of storage', () => {
    expect(readHire(aHire()).ok).toBe(true);
    expect(readHire({ ...aHire(), trip: {} }).ok).toBe(false);
    expect(readHire(null).ok).toBe(false);
    expect(readMorning(aMorning()).ok).toBe(true);
    expect(readMorning({ ...aMorning(), until: 'tomorrow' }).ok).toBe(false);
  });
});
