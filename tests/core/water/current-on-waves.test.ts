import { describe, expect, it } from 'vitest';
import { windAgainstStream } from '../../../src/core/water/current-on-waves.ts';
import { seaStateOf } from '../../../src/core/water/sea-state.ts';

// Waves of 3 s run at 4.68 m/s: a tenth is 0.47 m/s, a fifth 0.94 m/s.
const sea = { height: 0.4, period: 3 };
const wind = { fromDeg: 270, speed: 8 };
const found = (setDeg: number, rate: number) => windAgainstStream(wind, { setDeg, rate }, sea);

describe('windAgainstStream', () => {
  it('raises the sea by a class when the stream runs to where the wind comes from', () => {
    expect(found(270, 0.5)).toMatchObject({ flag: 'raised', state: { name: 'slight' } });
    expect(found(270, 0.4)).toMatchObject({ flag: 'none', state: { name: 'smooth' } });
  });

  it('says do not go from a fifth of the wave speed', () => {
    expect(found(270, 1)).toMatchObject({ flag: 'do-not-go' });
    expect(found(270, 1.2).heightRatio).toBe(Infinity);
  });

  it('counts as against within 60 degrees either side, over north too', () => {
    expect(found(330, 0.5).flag).toBe('raised');
    expect(found(210, 0.5).flag).toBe('raised');
    expect(found(331, 0.5).flag).toBe('none');
    const north = windAgainstStream({ fromDeg: 350, speed: 8 }, { setDeg: 20, rate: 0.5 }, sea);
    expect(north.flag).toBe('raised');
  });

  it('leaves a stream with the wind alone, and one in no sea', () => {
    expect(found(90, 2)).toMatchObject({ flag: 'none', heightRatio: 1 });
    expect(windAgainstStream(wind, { setDeg: 270, rate: 2 }, { height: 0, period: 0 }).flag).toBe('none');
  });
});

describe('seaStateOf', () => {
  it('names the classes of the code table, the limit in the lower', () => {
    expect(seaStateOf(0).code).toBe(0);
    expect(seaStateOf(0.5).name).toBe('smooth');
    expect(seaStateOf(0.51).name).toBe('slight');
    expect(seaStateOf(20).code).toBe(9);
  });
});
