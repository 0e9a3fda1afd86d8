import type { Measure } from '../../core/trip/shapes.ts';
import { PETROL_DENSITY } from '../../core/units/constants.ts';
import {
  FOOT,
  HORSEPOWER,
  KMH,
  KNOT,
  MINUTE,
  MPH,
  NAUTICAL_MILE,
  POUND,
  STATUTE_MILE,
  US_GALLON_L,
  WATT_HOUR,
} from '../../core/units/convert.ts';

export type UnitSystem = 'metric' | 'nautical' | 'imperial';
export type StoreKind = 'fuel' | 'charge';

/** One unit: its sign and how much SI one of it is. */
export interface Scale {
  readonly sign: string;
  readonly si: number;
}

const LITRE: Scale = { sign: 'L', si: PETROL_DENSITY };
const WATT_HOURS: Scale = { sign: 'Wh', si: WATT_HOUR };
const METRE: Scale = { sign: 'm', si: 1 };
const KILOGRAM: Scale = { sign: 'kg', si: 1 };
const KILOWATT: Scale = { sign: 'kW', si: 1000 };

const SAME: Pick<Record<Measure, Scale>, 'time' | 'count' | 'share' | 'angle'> = {
  time: { sign: 'min', si: MINUTE },
  count: { sign: '', si: 1 },
  share: { sign: '%', si: 0.01 },
  angle: { sign: '°', si: 1 },
};

const SCALES: Record<UnitSystem, Record<Measure, Scale>> = {
  metric: {
    ...SAME,
    amount: LITRE,
    mass: KILOGRAM,
    speed: { sign: 'km/h', si: KMH },
    power: KILOWATT,
    length: METRE,
    distance: { sign: 'km', si: 1000 },
  },
  nautical: {
    ...SAME,
    amount: LITRE,
    mass: KILOGRAM,
    speed: { sign: 'kn', si: KNOT },
    power: KILOWATT,
    length: METRE,
    distance: { sign: 'NM', si: NAUTICAL_MILE },
  },
  imperial: {
    ...SAME,
    amount: { sign: 'gal', si: US_GALLON_L * PETROL_DENSITY },
    mass: { sign: 'lb', si: POUND },
    speed: { sign: 'mph', si: MPH },
    power: { sign: 'hp', si: HORSEPOWER },
    length: { sign: 'ft', si: FOOT },
    distance: { sign: 'mi', si: STATUTE_MILE },
  },
};

/** The unit a measure is shown and typed in. An amount is kg of petrol for fuel and J for charge. */
export function scaleOf(system: UnitSystem, measure: Measure, store: StoreKind = 'fuel'): Scale {
  return measure === 'amount' && store === 'charge' ? WATT_HOURS : SCALES[system][measure];
}
