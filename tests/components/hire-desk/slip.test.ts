import jsQR from 'jsqr';
import { describe, expect, it } from 'vitest';
import haven from '../../../shared/waters/haven.geojson?raw';
import { levelText } from '../../../src/components/hire-desk/level-text.ts';
import { qrCode } from '../../../src/components/hire-desk/qr-drawing.ts';
import { reachable } from '../../../src/components/hire-desk/reachable.ts';
import { type CodeAsked, slipCode } from '../../../src/components/hire-desk/slip-code.ts';
import { slipText } from '../../../src/components/hire-desk/slip-lines.ts';
import { DEMO_FLEET } from '../../../src/components/reserve-check/demo-fleet.ts';
import { readShareLink } from '../../../src/core/files/share-link.ts';
import { readWatersText } from '../../../src/core/files/waters-file.ts';
import { checkHire } from '../../../src/core/hire/check-hire.ts';
import { toldOf } from '../../../src/core/hire/told-of.ts';
import { prepareWaters } from '../../../src/core/route/waters.ts';
import { planTrip } from '../../../src/core/trip/plan-trip.ts';
import { aHire, aMorning, NOON, OFFSET } from '../../core/hire/examples.ts';
import { METRIC } from './examples.ts';

const read = readWatersText(haven);
if (!read.ok) throw new Error('no waters');
const waters = prepareWaters(read.value);

const checked = checkHire({
  boat: DEMO_FLEET.boats[0]!,
  weights: [85, 70],
  fill: 1,
  fillKnownBy: 'measured',
  route: DEMO_FLEET.routes[0],
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
});
if (!checked.ok) throw new Error(checked.problems[0]!.message);
const hire = aHire({
  trip: checked.value.trip,
  told: toldOf(checked.value, ['Enough in the tank.'], 0.4),
  route: 'Ward jetty and back',
  contact: '+00 123 456',
});

const asked: CodeAsked = {
  hire,
  fleet: DEMO_FLEET,
  measures: METRIC,
  planner: 'https://desk.example/',
  onLine: true,
  offset: OFFSET,
  measured: (trip) => trip,
};

/** What an independent reader makes of a code, drawn at so many pixels a module. */
function readBack(text: string): string | undefined {
  const code = qrCode(text)!;
  const [quiet, scale] = [4, 3];
  const size = (code.size + 2 * quiet) * scale;
  const pixels = new Uint8ClampedArray(size * size * 4);
  for (let y = 0; y < size; y++) {
    for (let x = 0; x < size; x++) {
      const dark = code.get(Math.floor(x / scale) - quiet, Math.floor(y / scale) - quiet);
      pixels.set([dark ? 0 : 255, dark ? 0 : 255, dark ? 0 : 255, 255], (y * size + x) * 4);
    }
  }
  return jsQR(pixels, size, size)?.data;
}

describe('the code of a slip', () => {
  it('opens the same plan on a phone where the site can be reached', async () => {
    const { kind, content } = await slipCode(asked);
    expect(kind).toBe('link');
    expect(content.startsWith('https://desk.example/#trip=')).toBe(true);
    const opened = readShareLink(content.slice(content.indexOf('#')));
    if (!opened.ok) throw new Error(opened.problems[0]!.message);
    const plan = planTrip(opened.value, waters);
    expect(plan.ok && plan.value.verdict).toBe(hire.told.verdict);
    expect(plan.ok && plan.value.left).toEqual(checked.value.plan.left);
  });

  it('is short enough for a small print, and another reader reads it', async () => {
    const { content } = await slipCode(asked);
    expect(content.length).toBeLessThan(1400);
    expect(readBack(content)).toBe(content);
  });

  it('holds the slip as text where the page cannot be reached', async () => {
    for (const change of [
      { planner: 'http://localhost:4321/' },
      { planner: 'file:///desk/index.html' },
      { onLine: false },
    ]) {
      const { kind, content } = await slipCode({ ...asked, ...change });
      expect(kind).toBe('text');
      expect(content).toContain('Open hull');
      expect(readBack(content)).toBe(content);
    }
  });

  it('is read back whole with letters of other languages in it', () => {
    const text = 'Zurück um 14:30, über die Brücke – plaça, año';
    expect(readBack(text)).toBe(text);
  });

  it('goes to the address of the fleet where it names one', async () => {
    const fleet = { ...DEMO_FLEET, site: 'https://club.example/plan/' };
    const { content } = await slipCode({ ...asked, fleet, planner: 'http://localhost:4321/' });
    expect(content.startsWith('https://club.example/plan/#trip=')).toBe(true);
  });

  it('never promises more on the phone than the slip does', async () => {
    const doubtful = { ...hire, told: { ...hire.told, verdict: 'marginal' as const } };
    expect((await slipCode({ ...asked, hire: doubtful })).kind).toBe('text');
  });

  it('says nothing of who hires', async () => {
    for (const onLine of [true, false]) {
      const { content } = await slipCode({ ...asked, onLine });
      expect(content).not.toContain('123 456');
    }
  });
});

describe('the slip as text', () => {
  it('tells until when to leave, and after leaving when to be back', () => {
    expect(slipText(hire, DEMO_FLEET, METRIC)).toMatch(/Leave by: .*\nBack by: 2 h 00 min after leaving/);
    const left = slipText({ ...hire, leftAt: NOON + 600, due: NOON + 7800 }, DEMO_FLEET, METRIC);
    expect(left).toMatch(/Left at: .*\nBack by: \d\d:\d\d\n/);
  });

  it('tells with how much to turn', () => {
    expect(slipText(hire, DEMO_FLEET, METRIC)).toMatch(/Turn for home: .*less than \d\/8/);
  });
});

describe('a level as a gauge shows it', () => {
  it('is rounded up, never down', () => {
    expect(levelText(8.94 / 2, 8.94, 'fuel', METRIC)).toMatch(/^4\/8 /);
    expect(levelText(8.94 / 2 + 0.05, 8.94, 'fuel', METRIC)).toMatch(/^5\/8 /);
    expect(levelText(9, 8.94, 'fuel', METRIC)).toMatch(/^8\/8 /);
    expect(levelText(41e6, 100e6, 'charge', METRIC)).toMatch(/^45% /);
  });
});

describe('reachable', () => {
  it.each(['https://desk.example/', 'http://club.example/plan/'])('%s can be opened by a phone', (address) => {
    expect(reachable(address, true)).toBe(true);
    expect(reachable(address, false)).toBe(false);
  });

  it.each([
    'http://localhost:4321/',
    'http://127.0.0.1/',
    'http://192.168.1.20/',
    'http://10.0.0.4/',
    'http://172.20.0.1/',
    'http://[::1]/',
    'http://desk.local/',
    'file:///home/desk/index.html',
    'no address',
  ])('%s cannot', (address) => {
    expect(reachable(address, true)).toBe(false);
  });
});
