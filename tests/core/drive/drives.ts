import type { Battery, ElectricDrive, EngineCycle, PetrolDrive, Propeller } from '../../../src/core/craft/shapes.ts';
import { PETROL_DENSITY } from '../../../src/core/units/constants.ts';
import { HORSEPOWER, HOUR, INCH } from '../../../src/core/units/convert.ts';

/** Invented drives of ordinary sizes. */
export function inchPropeller(diameterIn: number, pitchIn: number, more: Partial<Propeller> = {}): Propeller {
  return { diameter: diameterIn * INCH, pitch: pitchIn * INCH, blades: 3, areaRatio: 0.5, quality: 0.88, ...more };
}

export function petrolDrive(hp: number, cycle: EngineCycle, propeller = inchPropeller(9.25, 9)): PetrolDrive {
  return {
    kind: 'petrol',
    name: `${hp} hp`,
    cycle,
    ratedPower: hp * HORSEPOWER,
    ratedRpm: 5500,
    gearRatio: 2.08,
    mass: 50,
    propeller,
    legDragArea: 0.001,
  };
}

export function electricDrive(
  ratedPower: number,
  ratedRpm: number,
  propeller = inchPropeller(10, 9, { quality: 0.92 }),
): ElectricDrive {
  return {
    kind: 'electric',
    name: `${ratedPower} W`,
    ratedPower,
    ratedRpm,
    gearRatio: 1,
    mass: 30,
    propeller,
    legDragArea: 0.0008,
    standbyLoss: 0.008,
    speedLoss: 0.045,
    torqueLoss: 0.12,
    accessoryPower: 15,
  };
}

export function battery(chemistry: Battery['chemistry'], energyWh: number, more: Partial<Battery> = {}): Battery {
  return { name: chemistry, chemistry, energyWh, voltage: 48, health: 1, mass: 30, at: { x: 1, y: 0 }, ...more };
}

/** kg/s as litres of petrol an hour. */
export function litresPerHour(flow: number): number {
  return (flow * HOUR) / PETROL_DENSITY;
}

/**
 * Resistance, N, of a made-up 3.3 m planing boat of `mass` kg at `speed` m/s: a step from displacement to planing, a
 * hump and a part that grows with speed squared.
 */
export function plainResistance(mass: number, speed: number): number {
  const x = speed / (3 * (mass / 430) ** (1 / 6));
  const step = (0.1 * x ** 4) / (1 + x ** 4);
  const hump = 0.02 * (Math.exp(-(((x - 1.1) / 0.4) ** 2)) - Math.exp(-((1.1 / 0.4) ** 2)) / (1 + x * x));
  return mass * 9.80665 * (step + hump + 0.00028 * speed * speed);
}
