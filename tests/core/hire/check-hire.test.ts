import { describe, expect, it } from 'vitest';
import haven from '../../../shared/waters/haven.geojson?raw';
import { measuredTrip } from '../../../src/components/planner/fitter.ts';
import { DEMO_FLEET } from '../../../src/components/reserve-check/demo-fleet.ts';
import { readWatersText } from '../../../src/core/files/waters-file.ts';
import { asLeft } from '../../../src/core/hire/as-left.ts';
import { type CheckAsked, checkHire } from '../../../src/core/hire/check-hire.ts';
import { deskTrials, fuelNote } from '../../../src/core/hire/hire-refill.ts';
import type { Fleet } from '../../../src/core/hire/shapes.ts';
import { toldOf } from '../../../src/core/hire/told-of.ts';
import { prepareWaters } from '../../../src/core/route/waters.ts';
import { fitTrials } from '../../../src/core/trials/fit.ts';
import { aHire, aMorning, NOON, OFFSET } from './examples.ts';

const file = readWatersText(haven);
if (!file.ok) throw new Error('no waters');
const waters = prepareWaters(file.value);

const asked: CheckAsked = {
  boat: DEMO_FLEET.boats[0]!,
  weights: [85, 70],
  fill: 1,
  fillKnownBy: 'measured',
  route: undefined,
  rule: { kind: 'after', seconds: 2 * 3600 },
  experience: 'some',
  fleet: DEMO_FLEET,
  morning: aMorning(),
  now: NOON,
  offset: OFFSET,
  boatOut: false,
  waters,
  reserve: [{ kind: 'thirds' }],
  measured: (trip) => trip,
};

function check(change: Partial<CheckAsked> = {}) {
  const found = checkHire({ ...asked, ...change });
  if (!found.ok) throw new Error(found.problems[0]!.message);
  return found.value;
}

describe('checkHire', () => {
  it('is a plain go for a set route and for hours inside the area, when all is known and small', () => {
    expect(check().verdict).toBe('go');
    expect(check({ route: DEMO_FLEET.routes[0] }).verdict).toBe('go');
  });

  it('names the waters of the desk on a set route: shipped ones, or its own by their name or that of the fleet', () => {
    const { waters: _, localWaters: __, ...bare } = DEMO_FLEET;
    const named = (fleet: Partial<Fleet>) =>
      check({ route: DEMO_FLEET.routes[0], fleet: { ...bare, ...fleet } }).trip.waters;
    const own = (name: string) => ({ ...file.value, name });
    expect(named({ waters: 'haven' })).toBe('haven');
    expect(named({ waters: 'haven', localWaters: own('Bay') })).toBe('haven');
    expect(named({ localWaters: own('Bay') })).toBe('Bay');
    expect(named({ localWaters: own('') })).toBe(DEMO_FLEET.name);
    expect(named({})).toBeUndefined();
  });

  it('is never more than doubtful without a morning, past it, past the survey, or without an area', () => {
    expect(check({ morning: undefined }).verdict).toBe('marginal');
    expect(check({ morning: aMorning({ until: NOON - 1 }) }).verdict).toBe('marginal');
    expect(check({ fleet: { ...DEMO_FLEET, until: '2027-05-01' } }).verdict).toBe('marginal');
    expect(check({ fleet: { ...DEMO_FLEET, area: undefined } }).verdict).toBe('marginal');
  });

  it('is never more than doubtful on a set route in waters for which nobody answers any more', () => {
    const dated = (validUntil: string) => prepareWaters({ ...file.value, validUntil });
    const route = DEMO_FLEET.routes[0];
    const last = check({ route, waters: dated('2027-06-19') });
    expect(last.verdict).toBe('go');
    const past = check({ route, waters: dated('2027-06-18') });
    expect(past.verdict).toBe('marginal');
    expect(past.plan.reasons.map(({ code }) => code)).toContain('waters-expired');
  });

  it('answers for an area in words with the dates of the fleet', () => {
    const { plan } = check({ fleet: { ...DEMO_FLEET, until: '2027-05-01' } });
    expect(plan.reasons).toContainEqual({ code: 'waters-expired', level: 'marginal', name: '2027-05-01' });
    expect(check().plan.assumptions.filter(({ code }) => code.startsWith('waters'))).toEqual([]);
  });

  it('refuses a beginner more wind than the desk allows beginners', () => {
    const fresh = aMorning({
      conditions: { water: 'sea', wind: { fromDeg: 240, speed: 6 }, stream: 'slack', sea: { height: 0.2 } },
    });
    expect(check({ morning: fresh, experience: 'new' }).verdict).toBe('no-go');
    expect(check({ morning: fresh, experience: 'some' }).verdict).not.toBe('no-go');
  });

  it('refuses a boat that has not come back', () => {
    expect(check({ boatOut: true }).verdict).toBe('no-go');
  });

  it('refuses a route that does not fit before the last return', () => {
    const morning = aMorning({ lastReturn: NOON + 40 * 60 });
    expect(check({ morning, route: DEMO_FLEET.routes[1] }).verdict).toBe('no-go');
  });

  it('lets a slip wait less where leaving at its end would be worse', () => {
    const rule = { kind: 'at', time: NOON + 3 * 3600 } as const;
    const roomy = check({ route: DEMO_FLEET.routes[0], rule });
    expect(roomy.validUntil).toBe(NOON + 1800);
    // Needs most of the time it has: half an hour later there is not enough.
    const needed = roomy.plan.time;
    const tight = check({ route: DEMO_FLEET.routes[0], rule: { kind: 'at', time: NOON + needed * 1.25 + 900 } });
    expect(tight.verdict).toBe('go');
    expect(tight.validUntil).toBeLessThan(roomy.validUntil);
    expect(tight.validUntil).toBeGreaterThan(NOON);
  });

  it('gives a level to turn with that still gets home with the reserve', () => {
    const checked = check({ route: DEMO_FLEET.routes[0] });
    const told = toldOf(checked, [], 0.45);
    expect(told.turnWith).toBeGreaterThan(checked.plan.needHome + checked.plan.reserve);
    expect(told.turnWith).toBeLessThan(told.start!);
  });
});

describe('asLeft', () => {
  it('is the trip from its actual departure, with no more time than is left to the time due', () => {
    const { trip } = check({ route: DEMO_FLEET.routes[0], rule: { kind: 'at', time: NOON + 2 * 3600 } });
    const left = asLeft({ trip, leftAt: NOON + 600, due: NOON + 2 * 3600 }, OFFSET);
    expect(left.conditions.departure).toBe('2027-06-19T12:10:00-02:00');
    expect(left.policy.timeAllowed).toBe(2 * 3600 - 600);
  });
});

describe('what a return tells of the boat', () => {
  const boat = DEMO_FLEET.boats[0]!;
  const { trip } = check();
  const hire = (used: 'as-planned' | 'unknown' | { running: number }) => aHire({ trip, back: { amount: 2, used } });
  const planned = [{ speed: 3, seconds: 5400 }];

  it('counts only where somebody knows how it was used', () => {
    expect(fuelNote(hire('unknown'), boat, { day: '2027-06-19', planned })).toBeUndefined();
    const known = fuelNote(hire({ running: 4000 }), boat, { day: '2027-06-19', planned });
    expect(known?.refill).toMatchObject({ amount: 2, spent: [{ speed: boat.speed, seconds: 4000 }] });
    expect(fuelNote(hire('as-planned'), boat, { day: '2027-06-19', planned })?.refill.spent).toEqual(planned);
  });

  it('keeps the weight of the crew but nobody of it', () => {
    const { load } = fuelNote(hire('as-planned'), boat, { day: '2027-06-19', planned })!.refill;
    expect(load.items.map(({ mass }) => mass)).toEqual([77.5, 77.5]);
  });

  it('narrows what is expected of the boat, and moves it towards what was noted', () => {
    const notes = [1, 2, 3].map((n) => ({
      ...fuelNote(hire({ running: 5400 }), boat, { day: '2027-06-19', planned })!,
      id: `n${n}`,
    }));
    const refills = notes.map((note) => ({ ...note, refill: { ...note.refill, id: note.id } }));
    const trials = deskTrials(boat, refills, 'sea')!;
    expect(fitTrials(trials).counted).toBe(3);
    const width = ({ plan }: ReturnType<typeof check>) => plan.need.high / plan.need.low;
    const noted = check({ measured: (asked) => measuredTrip({ ...asked, trials }, '2027-06-19').trip });
    expect(width(noted)).toBeLessThan(width(check()));
    expect(deskTrials(boat, [], 'sea')).toBeUndefined();
  });
});
