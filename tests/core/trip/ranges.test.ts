import { describe, expect, it } from 'vitest';
import { destination } from '../../../src/core/route/distance.ts';
import { needPerMetre } from '../../../src/core/trip/per-metre.ts';
import { quickPlan } from '../../../src/core/trip/quick-plan.ts';
import { ranges } from '../../../src/core/trip/ranges.ts';
import type { Sailed } from '../../../src/core/trip/sail.ts';
import { standingOf } from '../../../src/core/trip/standing.ts';
import { haven, soundTrip } from '../../trips.ts';

const found = standingOf(soundTrip(), haven());
if (!found.ok) throw new Error('the trip can be planned');
const { prepared, fuel } = found.value;
const { run } = fuel;
const out = run.sailed[0]!;
const { from, to, distance, trackDeg } = out.stretch;
/** Slow through the harbour before it, a quarter as long. */
const harbour: Sailed = {
  ...out,
  stretch: {
    ...out.stretch,
    from: destination(from, trackDeg + 180, distance / 4),
    to: from,
    distance: distance / 4,
    speed: 1.5,
  },
};
const perMetre = (part: 'out' | 'home', oneWay = false) =>
  needPerMetre(
    prepared,
    { ...run.scenario, ...(oneWay && { oneWay }) },
    { ...out.stretch, part, trackDeg: part === 'out' ? trackDeg : (trackDeg + 180) % 360 },
    run.time,
  );

describe('how far the boat gets', () => {
  it('is what is left after manoeuvring, over what a metre takes out and home', () => {
    const { oneWay, outAndHome } = ranges(prepared, run, run.manoeuvring + 5);
    expect(outAndHome / (5 / (perMetre('out') + perMetre('home')))).toBeCloseTo(1, 5);
    expect(oneWay / (5 / Math.max(perMetre('out'), perMetre('out', true)))).toBeCloseTo(1, 5);
  });

  it('is told at the speed of the longest stretch out, wherever a shorter one lies', () => {
    const alone = ranges(prepared, run, 5);
    const home = run.sailed.filter(({ stretch }) => stretch.part === 'home');
    const beyond = {
      ...harbour,
      stretch: { ...harbour.stretch, from: to, to: destination(to, trackDeg, distance / 4) },
    };
    for (const sailed of [
      [harbour, out, ...home],
      [out, beyond, ...home],
    ]) {
      const all = ranges(prepared, { ...run, sailed }, 5);
      expect(all.outAndHome / alone.outAndHome).toBeCloseTo(1, 3);
      expect(all.oneWay / alone.oneWay).toBeCloseTo(1, 3);
    }
  });

  it('is nothing with no more than manoeuvring takes, or where no way out can be sailed', () => {
    expect(ranges(prepared, run, run.manoeuvring)).toEqual({ oneWay: 0, outAndHome: 0 });
    expect(ranges(prepared, run, 0)).toEqual({ oneWay: 0, outAndHome: 0 });
    const stuck = { ...run, sailed: run.sailed.map((s) => ({ ...s, possible: false })) };
    expect(ranges(prepared, stuck, 5)).toEqual({ oneWay: 0, outAndHome: 0 });
  });
});

describe('a trip against a stream that is stronger than the boat', () => {
  const trip = soundTrip();
  const conditions = { ...trip.conditions, stream: { setDeg: 0, rate: 12 } };

  it('has no range, no point to turn back at and nothing that would mend it', () => {
    const planned = quickPlan({ ...trip, conditions }, haven());
    if (!planned.ok) throw new Error('it is planned all the same');
    const { verdict, range, turnBack, halfway, fillNeeded } = planned.value;
    expect({ verdict, range, turnBack, halfway, fillNeeded }).toEqual({
      verdict: 'no-go',
      range: { oneWay: 0, outAndHome: 0 },
      turnBack: undefined,
      halfway: undefined,
      fillNeeded: undefined,
    });
  });
});
