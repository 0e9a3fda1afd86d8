import { fillNeeded } from '../../../src/core/trip/fill-needed.ts';
import type { FloatLimits } from '../../../src/core/trip/floating.ts';
import { type Holding, holding } from '../../../src/core/trip/holding.ts';
import { payload } from '../../../src/core/trip/payload.ts';
import { planFrom } from '../../../src/core/trip/quick-plan.ts';
import type { Payload, TippingValue, Trip } from '../../../src/core/trip/shapes.ts';
import { type Standing, standingOf } from '../../../src/core/trip/standing.ts';
import { tippingValues } from '../../../src/core/trip/tipping.ts';
import { haven } from '../../trips.ts';

/** How often a tank or battery and an engine were asked: what the slow figures of a plan take their time for. */
export interface Questions {
  tank: number;
  engine: number;
}

export interface SlowFigures {
  readonly fill: { readonly value: number | undefined; readonly asked: Questions };
  readonly payload: { readonly value: Payload; readonly asked: Questions };
  readonly tipping: readonly { readonly value: TippingValue; readonly asked: Questions }[];
  /** Of all tipping values, those that do not turn as well. */
  readonly allTipping: Questions;
}

/** The slow figures of a plan, one after the other as a plan makes them, with the questions each took. */
export function slowFigures(trip: Trip): SlowFigures {
  const found = standingOf(trip, haven());
  if (!found.ok) throw new Error(found.problems[0]!.message);
  const asked: Questions = { tank: 0, engine: 0 };
  const since = (before: Questions): Questions => ({
    tank: asked.tank - before.tank,
    engine: asked.engine - before.engine,
  });
  const { fuel, balance, humpSpeed } = found.value;
  const prepared = {
    ...found.value.prepared,
    usable: (scenario: Parameters<Standing['prepared']['usable']>[0]) => {
      asked.tank++;
      return found.value.prepared.usable(scenario);
    },
  };
  const standing = { ...found.value, prepared };
  const floats: FloatLimits = found.value.floats;
  const plain = holding(prepared, fuel.run, found.value.asked);
  const counted =
    (ask: Holding['allows']): Holding['allows'] =>
    (...question) => {
      asked.engine++;
      return ask(...question);
    };
  const holds = { allows: counted(plain.allows), planes: counted(plain.planes), speeds: counted(plain.speeds) };
  const filled = fillNeeded(prepared, fuel, humpSpeed);
  const fill = { value: filled, asked: since({ tank: 0, engine: 0 }) };
  const beforePayload = { ...asked };
  const spare = payload(prepared, fuel, balance, { holds, floats, humpSpeed });
  const loaded = { value: spare, asked: since(beforePayload) };
  const { reasons } = planFrom(standing, { filled, easierSpeed: () => undefined });
  const beforeTipping = { ...asked };
  const values = tippingValues(prepared, fuel, reasons, balance, { holds, floats, humpSpeed, payload: spare, filled });
  const each: Questions[] = [];
  let last = { ...asked };
  let step = values.next();
  while (!step.done) {
    each.push(since(last));
    last = { ...asked };
    step = values.next();
  }
  const knobs = ['crew-mass', 'consumption', 'wind', 'stream', 'sea', 'fill'];
  const tipping = step.value.map((value) => ({ value, asked: each[knobs.indexOf(value.knob)]! }));
  return { fill, payload: loaded, tipping, allTipping: since(beforeTipping) };
}
