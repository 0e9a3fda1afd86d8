import { hullFlags } from '../hull/flags.ts';
import { plateFindings } from '../load/plate.ts';
import { floatVerdict, IMMERSED, MADE_FOR, tubeBuoyancy } from '../trip/floating.ts';
import type { Reason, ReasonCode } from '../trip/shapes.ts';
import type { AtSpeed } from './at-speed.ts';
import type { Loaded } from './loaded.ts';

const PLATE = {
  load: ['over-plate-load', 'mass'],
  persons: ['over-plate-persons', 'count'],
  power: ['over-plate-power', 'power'],
  'engine-mass': ['over-plate-engine-mass', 'mass'],
} as const satisfies Record<string, readonly [ReasonCode, Reason['measure']]>;

/** Sideways offset of the centre of gravity over beam from which a plan is marginal, and no-go (common practice, no source). */
const LATERAL = { off: 0.1, capsizing: 0.2 };
const LCG = { least: 0.2, most: 0.5 };

/** What plate, floating and balance say of a loaded boat, and whether its cruising speed lies outside the method. */
export function loadReasons(loaded: Loaded, cruise: AtSpeed): readonly Reason[] {
  return [
    ...plateReasons(loaded),
    ...floatReasons(loaded),
    ...balanceReasons(loaded),
    ...methodReasons(loaded, cruise),
  ];
}

function plateReasons({ craft, balance }: Loaded): Reason[] {
  const { plate } = craft.hull;
  if (plate === undefined) return [{ code: 'plate-unknown', level: 'marginal' }];
  if (plate === 'none') return [{ code: 'no-plate', level: 'marginal' }];
  return plateFindings(craft, balance).map(({ over, value, limit }) => {
    const [code, measure] = PLATE[over];
    return { code, level: 'no-go', measure, value, limit };
  });
}

function floatReasons({ craft, boat, afloat }: Loaded): Reason[] {
  const floating = { trip: { craft }, density: boat.water.density };
  const level = floatVerdict(floating, afloat.mass);
  if (level === 'go') return [];
  const carried = tubeBuoyancy(floating);
  // Too heavy for the method alone is not too low in the water.
  if (carried === undefined || afloat.mass <= IMMERSED.fine * carried) {
    return [{ code: 'outside-method', level: 'marginal', measure: 'mass', value: afloat.mass, limit: MADE_FOR.most }];
  }
  const limit = level === 'no-go' ? IMMERSED.most : IMMERSED.fine;
  return [{ code: 'low-in-water', level, measure: 'share', value: afloat.mass / carried, limit }];
}

function balanceReasons({ craft, balance }: Loaded): Reason[] {
  const reasons: Reason[] = [];
  const offset = Math.abs(balance.lateral) / craft.hull.beam;
  if (offset > LATERAL.off) {
    reasons.push({
      code: 'off-balance',
      level: offset > LATERAL.capsizing ? 'no-go' : 'marginal',
      measure: 'length',
      value: balance.lateral,
      limit: LATERAL.off * craft.hull.beam,
    });
  }
  const { lcgShare } = balance;
  if (lcgShare < LCG.least || lcgShare > LCG.most) {
    const limit = lcgShare < LCG.least ? LCG.least : LCG.most;
    reasons.push({ code: 'overtrimmed', level: 'marginal', measure: 'share', value: lcgShare, limit });
  }
  return reasons;
}

function methodReasons({ craft, boat, afloat }: Loaded, { steady }: AtSpeed): Reason[] {
  const state = { mass: afloat.mass, lcg: afloat.lcg, water: boat.water };
  const flags = hullFlags(craft.hull, state, steady.hull).filter((flag) => flag !== 'lcg-range');
  return flags.length > 0 ? [{ code: 'outside-method', level: 'note' }] : [];
}
