import { PETROL_DENSITY } from '../units/constants.ts';
import type { FuelVerdict } from './fuel-verdict.ts';
import { surveyAssumptions } from './judge-survey.ts';
import { placesTaken } from './leg-plans.ts';
import type { Prepared } from './prepare.ts';
import { UNKNOWN } from './scenario.ts';
import type { Assumption } from './shapes.ts';

/** Everything the plan took for granted that the user did not say, each of which can be changed. */
export function assumptions(prepared: Prepared, fuel: FuelVerdict): readonly Assumption[] {
  const { trip, around } = prepared;
  const { conditions, load, policy, craft } = trip;
  const list: Assumption[] = [];
  if (load.fill === undefined) list.push({ code: 'fill', measure: 'share', value: UNKNOWN.fill[0] });
  else if (load.fillKnownBy === undefined) list.push({ code: 'fill-gauge' });
  if (around.wind === undefined) list.push({ code: 'wind', measure: 'speed', value: UNKNOWN.headwindHome[0] });
  if (around.stream === undefined) list.push({ code: 'stream', measure: 'speed', value: UNKNOWN.foulHome[0] });
  if (!prepared.seaTold) list.push({ code: 'sea', measure: 'length', value: fuel.run.scenario.waveHeight });
  else if (fuel.run.scenario.waves) {
    const highest = Math.max(...fuel.run.sailed.map((s) => s.weather.waveHeight));
    list.push({ code: 'sea-from-wind', measure: 'length', value: highest });
  }
  if (fuel.run.refills) list.push({ code: 'refilled', name: filledAt(prepared).join(', ') });
  const places = placesTaken(fuel.run.sailed);
  if (places.length > 0) list.push({ code: 'stream-by-tide', name: places.join(', ') });
  const spread = (conditions.streamPlaces ?? []).filter((place) => place.spread && places.includes(place.name));
  if (spread.length > 0) list.push({ code: 'stream-spread', name: spread.map(({ name }) => name).join(', ') });
  if (fuel.run.sailed.some((s) => s.speed < s.planned - 0.01)) list.push({ code: 'speed-in-waves' });
  if (craft.drive.kind === 'electric' && conditions.batteryTemperatureC === undefined) {
    list.push({ code: 'battery-temperature', value: UNKNOWN.batteryTemperatureC[0] });
  }
  if (prepared.unknownSeats.length > 0)
    list.push({ code: 'seat', measure: 'count', value: prepared.unknownSeats.length });
  if (policy.manoeuvring === undefined)
    list.push({ code: 'manoeuvring', measure: 'time', value: prepared.manoeuvring });
  if (policy.drawnFactor === undefined) {
    list.push({ code: 'drawn-factor', value: prepared.drawnFactor });
  }
  if (policy.reserve.length === 0) list.push({ code: 'reserve-rule' });
  const code = craft.calibration ? 'measured-boat' : 'unmeasured-boat';
  list.push({ code, measure: 'share', value: fuel.spread });
  if (craft.store.kind === 'tank') list.push({ code: 'petrol-density', value: PETROL_DENSITY });
  const seasonal = prepared.hazards.some((h) => h.kind === 'keep-out' && h.zone?.season !== undefined);
  if (seasonal && conditions.departure === undefined) list.push({ code: 'keep-out-season' });
  list.push(...surveyAssumptions(prepared));
  if (conditions.departure === undefined) list.push({ code: 'daylight' });
  list.push({ code: 'extra-load-at-centre' });
  return list;
}

/** Names of the waypoints at which the trip fills up. */
function filledAt({ trip }: Prepared): readonly string[] {
  return trip.route.waypoints.flatMap(({ refill, name }) => (refill === undefined || !name ? [] : [name]));
}
