import { describe, expect, it } from 'vitest';
import { marksOf } from '../../../src/components/curve-plot/plot-labels.ts';
import { curveFacts, readout, useUnit } from '../../../src/components/curve-plot/plot-texts.ts';
import { readAt } from '../../../src/components/curve-plot/read-at.ts';
import { NAUTICAL } from '../../../src/components/units/default-measures.ts';
import { measuresFor } from '../../../src/components/units/measures.ts';
import { PETROL_DENSITY } from '../../../src/core/units/constants.ts';
import { KNOT } from '../../../src/core/units/convert.ts';
import { electricCurve, planingCurve, stuckCurve } from '../answer/fixtures.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('useUnit', () => {
  it('is litres per mile or per hour for fuel', () => {
    expect(useUnit(planingCurve, 'distance', NAUTICAL)).toEqual({ sign: 'L/NM', si: PETROL_DENSITY / 1852 });
    expect(useUnit(planingCurve, 'hour', NAUTICAL)).toEqual({ sign: 'L/h', si: PETROL_DENSITY / 3600 });
    expect(useUnit(planingCurve, 'distance', measuresFor('imperial', 'en')).sign).toBe('gal/mi');
  });

  it('is watt-hours per mile for charge, and watts or kilowatts by size', () => {
    expect(useUnit(electricCurve, 'distance', NAUTICAL)).toEqual({ sign: 'Wh/NM', si: 3600 / 1852 });
    expect(useUnit(electricCurve, 'hour', NAUTICAL).sign).toBe('W');
    const strong = {
      ...electricCurve,
      points: electricCurve.points.map((p) => ({ ...p, flow: { low: 2000, median: 4000, high: 5000 } })),
    };
    expect(useUnit(strong, 'hour', NAUTICAL)).toEqual({ sign: 'kW', si: 1000 });
  });
});

describe('readout', () => {
  it('tells use, flow, revs, trim and regime at a speed', () => {
    const said = plain(readout(readAt(planingCurve, 12 * KNOT)!, planingCurve, NAUTICAL));
    expect(said).toMatch(
      /^12\.0 kn: 0\.3\d L\/NM \(0\.3\d L\/NM to 0\.4\d L\/NM\), 4\.\d L\/h, 3,5\d\d rpm, trim \d°, planing\.$/,
    );
  });

  it('warns where the engine cannot hold the speed', () => {
    expect(readout(readAt(planingCurve, 23 * KNOT)!, planingCurve, NAUTICAL)).toContain('cannot hold');
  });
});

describe('curveFacts', () => {
  it('tells a boat that planes its hump and top speed', () => {
    const facts = plain(curveFacts(planingCurve, NAUTICAL).join(' '));
    expect(facts).toContain('crossed with 35% more thrust than it takes, planing from 9.5 kn');
    expect(facts).toContain('Top speed 21.4 kn (20.1 to 22.6 kn)');
  });

  it('tells a boat stuck before its hump where it stays', () => {
    const facts = plain(curveFacts(stuckCurve, NAUTICAL).join(' '));
    expect(facts).toContain('stays at 6.4 kn');
    expect(facts).toContain('Once over the hump it would hold up to 15.0 kn');
  });

  it('does not promise a launch that it planes', () => {
    const facts = curveFacts(electricCurve, NAUTICAL).join(' ');
    expect(facts).toContain('does not plane');
    expect(facts).not.toContain('while planing');
  });
});

describe('marksOf', () => {
  it('marks both best speeds, the top and every limit on the way', () => {
    const marks = marksOf(planingCurve, [{ speed: 5 * KNOT, name: 'harbour' }], NAUTICAL);
    expect(marks.map((mark) => plain(mark.text))).toEqual([
      'least use 3.9 kn',
      'least planing 12.6 kn',
      'top 21.4 kn',
      'limit, harbour, 5.0 kn',
    ]);
  });
});
