import type { Craft, Hull } from '../craft/shapes.ts';
import type { Load } from '../load/shapes.ts';
import type { Trials } from '../trials/shapes.ts';
import type { Trip } from '../trip/shapes.ts';
import type { Problem } from '../units/result.ts';
import type { Conditions } from '../water/shapes.ts';

/** Fields that are sound each on its own but do not fit together. */
export function contradictions({ craft, load, conditions, trials }: Trip): Problem[] {
  return [
    ...tideContradictions(conditions),
    ...hullProblems(craft.hull, 'craft.hull'),
    ...driveProblems(craft, 'craft'),
    ...loadProblems(load, craft.hull, 'load'),
    ...(trials ? trialsContradictions(trials, 'trials') : []),
  ];
}

function tideContradictions({ streamPlaces = [], tide }: Conditions): Problem[] {
  const problems: Problem[] = [];
  streamPlaces.forEach(({ springs, neaps }, i) => {
    if (springs.length === neaps.length) return;
    const message = `Stream place ${i + 1} has ${springs.length} hours at springs and ${neaps.length} at neaps`;
    problems.push({ code: 'uneven', path: `conditions.streamPlaces.${i}.neaps`, message, limit: springs.length });
  });
  if (tide && tide.meanSpringRange <= tide.meanNeapRange) {
    const message = 'The mean range at springs must be more than the mean range at neaps';
    problems.push({ code: 'too-small', path: 'conditions.tide.meanSpringRange', message, limit: tide.meanNeapRange });
  }
  return problems;
}

/** The same of the evidence of trials, found at `path`. */
export function trialsContradictions({ hull, setups, runs, refills }: Trials, path: string): Problem[] {
  const problems = hullProblems(hull, `${path}.hull`);
  setups.forEach((setup, i) => {
    problems.push(...driveProblems(setup, `${path}.setups.${i}`));
  });
  const known = new Set(setups.map((setup) => setup.id));
  const twice = (list: string, entries: readonly { readonly id: string }[], noun: string) => {
    for (const index of repeated(entries)) {
      const message = `Two ${noun} have the id ${JSON.stringify(entries[index]!.id)}`;
      problems.push({ code: 'duplicate', path: `${path}.${list}.${index}.id`, message });
    }
  };
  twice('setups', setups, 'setups');
  for (const [list, entries, noun] of [
    ['runs', runs, 'Run'],
    ['refills', refills, 'Refill'],
  ] as const) {
    twice(list, entries, `${noun.toLowerCase()}s`);
    entries.forEach(({ setup, load }, i) => {
      if (!known.has(setup)) {
        const message = `${noun} ${i + 1} was made with ${JSON.stringify(setup)}, a setup that is not listed`;
        problems.push({ code: 'no-such-setup', path: `${path}.${list}.${i}.setup`, message });
      }
      problems.push(...loadProblems(load, hull, `${path}.${list}.${i}.load`));
    });
  }
  return problems;
}

function hullProblems({ length, wettedLength, beam, planingBeam, stations }: Hull, at: string): Problem[] {
  const problems: Problem[] = [];
  if (wettedLength > length) {
    const message = `The wetted length must be at most the length of the hull, ${length} m`;
    problems.push({ code: 'too-large', path: `${at}.wettedLength`, message, limit: length });
  }
  if (planingBeam > beam) {
    const message = `The planing beam must be at most the beam of the hull, ${beam} m`;
    problems.push({ code: 'too-large', path: `${at}.planingBeam`, message, limit: beam });
  } else if (planingBeam > wettedLength) {
    // No boat; the planing equations have no answer either.
    const message = `The planing beam must be at most the wetted length, ${wettedLength} m`;
    problems.push({ code: 'too-large', path: `${at}.planingBeam`, message, limit: wettedLength });
  }
  for (const index of repeated(stations)) {
    const message = `Two places aboard have the id ${JSON.stringify(stations[index]!.id)}`;
    problems.push({ code: 'duplicate', path: `${at}.stations.${index}.id`, message });
  }
  return problems;
}

/** Pitch over diameter: the propeller series is known from 0.5 to 1.4; a little beyond it still turns sensibly. */
const PITCH_RATIOS = [0.4, 1.5] as const;

function driveProblems({ drive, store }: Pick<Craft, 'drive' | 'store'>, at: string): Problem[] {
  const problems: Problem[] = [];
  const { diameter, pitch } = drive.propeller;
  const [least, most] = PITCH_RATIOS;
  if (pitch < least * diameter || pitch > most * diameter) {
    const message = `The pitch of the propeller must be between ${least} and ${most} times its diameter`;
    const limit = (pitch < least * diameter ? least : most) * diameter;
    problems.push({ code: 'out-of-range', path: `${at}.drive.propeller.pitch`, message, limit });
  }
  if ((drive.kind === 'petrol') !== (store.kind === 'tank')) {
    const message =
      drive.kind === 'petrol'
        ? 'A petrol engine needs a tank, not a battery'
        : 'An electric motor needs a battery, not a tank';
    problems.push({ code: 'wrong-store', path: `${at}.store.kind`, message });
  }
  if (store.kind === 'tank') {
    store.tanks.forEach(({ capacityL, unusableL }, index) => {
      if (unusableL <= capacityL) return;
      const message = `The unusable rest of tank ${index + 1} must be at most its capacity, ${capacityL} L`;
      problems.push({ code: 'too-large', path: `${at}.store.tanks.${index}.unusableL`, message, limit: capacityL });
    });
  }
  return problems;
}

function loadProblems({ items }: Load, { stations }: Hull, at: string): Problem[] {
  const problems: Problem[] = [];
  for (const index of repeated(items)) {
    const message = `Two items have the id ${JSON.stringify(items[index]!.id)}`;
    problems.push({ code: 'duplicate', path: `${at}.items.${index}.id`, message });
  }
  const places = new Set(stations.map((station) => station.id));
  const helms: number[] = [];
  items.forEach(({ station, helm, kind }, index) => {
    if (station !== undefined && !places.has(station)) {
      const message = `Item ${index + 1} sits at ${JSON.stringify(station)}, a place this hull does not have`;
      problems.push({ code: 'no-such-station', path: `${at}.items.${index}.station`, message });
    }
    if (helm && (kind === 'gear' || kind === 'dog')) {
      const message = `Item ${index + 1} is at the helm and not a person`;
      problems.push({ code: 'helm-not-person', path: `${at}.items.${index}.helm`, message });
    }
    if (helm) helms.push(index);
  });
  for (const index of helms.slice(1)) {
    const message = `Item ${index + 1} is at the helm, and so is item ${helms[0]! + 1}`;
    problems.push({ code: 'two-helms', path: `${at}.items.${index}.helm`, message });
  }
  return problems;
}

/** Indexes of entries whose id an earlier entry has. */
function repeated(entries: readonly { readonly id: string }[]): number[] {
  const seen = new Set<string>();
  return entries.flatMap(({ id }, index) => {
    if (seen.has(id)) return [index];
    seen.add(id);
    return [];
  });
}
