import { ambientCorrection } from '../../../src/core/drive/ambient.ts';
import {
  bSeriesRange,
  kqOf,
  ktOf,
  openWater,
  openWaterEfficiency,
  openWaterPitchSlope,
} from '../../../src/core/drive/b-series.ts';
import { batteryBank, storeFlow, usableCharge } from '../../../src/core/drive/battery.ts';
import { agedHealth, coldFactor } from '../../../src/core/drive/battery-chemistry.ts';
import { batteryPowerLimit } from '../../../src/core/drive/battery-power.ts';
import { peukertTime, peukertTimeFromOneAmpere, rateFactor } from '../../../src/core/drive/battery-rate.ts';
import { internalResistance, openCircuitVoltage, sag } from '../../../src/core/drive/battery-sag.ts';
import { burrill, kellerAreaRatio } from '../../../src/core/drive/cavitation.ts';
import { driveModel, drivePoint, flowGradient, idleFlow } from '../../../src/core/drive/demand.ts';
import { lossPower, motorLimitShare, motorLosses } from '../../../src/core/drive/electric.ts';
import {
  engineFlow,
  engineIdleFlow,
  engineLimitShare,
  engineOf,
  engineRevLimit,
  engineSlopes,
} from '../../../src/core/drive/engine.ts';
import { boatTorqueShare, cycleFlow, cycleLoadFactor } from '../../../src/core/drive/engine-cycle.ts';
import { monotoneCurve } from '../../../src/core/drive/pchip.ts';
import { fuelFlow, fuelFlowSlopes, fuelLaw, fullThrottleShare, idleFuelFlow } from '../../../src/core/drive/petrol.ts';
import { apparentSlip, propellerModel, propellerPoint, propellerSlopes } from '../../../src/core/drive/propeller.ts';
import { fuelMass, usableFuel, usableFuelInRoughWater } from '../../../src/core/drive/tank.ts';
import { oilForFuel } from '../../../src/core/drive/two-stroke-oil.ts';
import { ventilatedThrustShare } from '../../../src/core/drive/ventilation.ts';
import { engines, stores } from '../../../src/core/files/catalogue.ts';
import { digest } from './digest.ts';
import { keeping } from './keeping.ts';

const SHARES = [0, 0.1, 0.3, 0.55, 0.8, 0.97, 1, 1.05, 1.2];
const drives = engines.filter((_, i) => i % 4 === 0 || i > 17);
const propeller = engines[3]!.drive.propeller;

keeping('drive', {
  ...Object.fromEntries(
    drives.map(({ id, drive }) => [
      id,
      () => {
        const engine = engineOf(drive, 1.1, 0.02);
        const models = (['rib', 'displacement', 'inflatable-catamaran', 'rigid-v'] as const).map((form, i) =>
          driveModel(drive, {
            density: i === 0 ? 1000 : 1025,
            form,
            factors: { pitchShift: i === 1 ? 0.01 : 0, fuel: i === 2 ? 1.2 : 1, friction: i === 2 ? 0.03 : 0 },
            fullPower: i === 3 ? 0.9 : 1,
          }),
        );
        const at = models.flatMap((model) =>
          (
            [
              [20, 0.5],
              [120, 1.5],
              [300, 2.6],
              [520, 4],
              [700, 7],
              [900, 10],
            ] as const
          ).map(([thrust, speed]) => ({ ...drivePoint(model, thrust, speed), ...flowGradient(model, thrust, speed) })),
        );
        return digest({
          at,
          idle: models.map(idleFlow),
          engine: SHARES.map((share) => [
            engineFlow(engine, share * engine.ratedRevs, 0.7 * engine.ratedTorque),
            engineLimitShare(engine, share),
            Object.values(engineSlopes(engine, Math.max(share, 0.05) * engine.ratedRevs, 0.6 * engine.ratedTorque)),
          ]),
          limits: [engineRevLimit(engine), engineIdleFlow(engine)],
        });
      },
    ]),
  ),
  'petrol laws': () =>
    (['4s-carb', '4s-efi', '2s-carb', '2s-di'] as const).map((cycle) => {
      const { drive } = engines[10]!;
      if (drive.kind !== 'petrol') throw new Error('not petrol');
      const law = fuelLaw({ ...drive, cycle }, 1.05, -0.01);
      return [
        law,
        SHARES.map((share) => [
          fuelFlow(law, share, share),
          Object.values(fuelFlowSlopes(law, share, share)),
          fullThrottleShare(share),
          boatTorqueShare(share),
        ]),
        idleFuelFlow(law),
        cycleFlow(law),
        fuelLaw({ ...drive, cycle }, 1, -2).friction,
      ];
    }),
  'electric losses': () => {
    const { drive } = engines.at(-2)!;
    if (drive.kind !== 'electric') throw new Error('not electric');
    return [
      motorLosses(drive),
      motorLosses(drive, 1.2, 0.01),
      motorLosses(drive, 1, -1),
      SHARES.map((share) => [lossPower(motorLosses(drive), share, share), motorLimitShare(share)]),
    ];
  },
  propellers: () =>
    [
      propeller,
      engines.at(-1)!.drive.propeller,
      { ...propeller, blades: 4, areaRatio: 0.7, quality: 1 },
      { ...propeller, blades: 2, areaRatio: 0.35 },
    ].map((one) => {
      const water = openWater(one);
      const slope = openWaterPitchSlope(one);
      const model = propellerModel(one, 1025);
      return [
        [0, 0.2, 0.5, 0.8].map((advance) => [
          ktOf(water, advance),
          kqOf(water, advance),
          openWaterEfficiency(water, advance),
          ktOf(slope, advance),
        ]),
        bSeriesRange(one),
        (
          [
            [100, 1],
            [300, 3],
            [600, 6],
            [0, 4],
            [50, 0],
          ] as const
        ).map(([thrust, speed]) => {
          const point = propellerPoint(model, thrust, speed);
          return [point, Object.values(propellerSlopes(model, slope, { thrust, point }))];
        }),
        (
          [
            [300, 3, 25],
            [900, 8, 45],
            [100, 1, 12],
          ] as const
        ).map(([thrust, advanceSpeed, revs]) => {
          const loaded = { propeller: one, thrust, advanceSpeed, revs, density: 1025, immersion: 0.3 };
          return [kellerAreaRatio(loaded), burrill(loaded)];
        }),
      ];
    }),
  banks: () =>
    stores
      .flatMap(({ store }) => (store.kind === 'battery' ? [store.batteries] : []))
      .map((batteries) =>
        [-15, -5, 0, 12, 25, 40].map((temperature) => {
          const bank = batteryBank(batteries, temperature);
          return digest([
            bank,
            [0, 0.2, 0.7, 1, 1.3].map((charge) => [usableCharge(bank, charge), batteryPowerLimit(bank, charge)]),
            [10, 400, 3000].map((power) => storeFlow(power, bank)),
          ]);
        }),
      ),
  'a mixed bank and an empty one': () => {
    const [nmc, lfp, agm] = [6, 8, 14]
      .map((i) => stores[i]!.store)
      .flatMap((store) => (store.kind === 'battery' ? store.batteries : []));
    return [
      batteryBank([nmc!, { ...lfp!, health: 0.8 }, { ...agm!, health: 0 }], 5),
      batteryBank([{ ...nmc!, health: 0 }], 5),
      storeFlow(300, batteryBank([], 5)),
      batteryPowerLimit(batteryBank([], 5), 1),
    ];
  },
  'batteries in parts': () => [
    (['nmc', 'lfp', 'agm', 'flooded-lead'] as const).map((chemistry) => [
      [-20, -10, 0, 10, 20, 25, 45].map((temperature) => coldFactor(chemistry, temperature)),
      agedHealth(chemistry, 4, 300),
      agedHealth(chemistry, 40, 3000),
    ]),
    peukertTime({ capacityAh: 100, ratedTime: 72000, current: 20, exponent: 1.25 }),
    peukertTimeFromOneAmpere(120, 20, 1.2),
    [0.2, 0.8, 1, 1.5, 6].map((rate) => rateFactor(rate, 1.2)),
    [openCircuitVoltage(24, 0.3), internalResistance(24, 50, 5), sag(25, 0.05, 900), sag(25, 0.5, 900)],
  ],
  tanks: () =>
    stores
      .flatMap(({ store }) => (store.kind === 'tank' ? [store.tanks] : []))
      .map((tanks) =>
        [0, 0.05, 0.4, 0.95, 1].map((fill) => [
          usableFuel(tanks, fill),
          usableFuelInRoughWater(tanks, fill),
          fuelMass(tanks, fill),
        ]),
      ),
  others: () => [
    [ambientCorrection(99, 25), ambientCorrection(95, 35), cycleLoadFactor(), oilForFuel(8, 50)],
    [-0.2, 0, 0.1, 0.3, 0.6].map((depth) => ventilatedThrustShare(depth, 0.12)),
    [apparentSlip(45, 0.24, 6), apparentSlip(45, 0.24, 0)],
    [-1, 0, 0.4, 1.2, 2.5, 3, 9].map(monotoneCurve([0, 1, 2, 3], [0, 2, 2, 5])),
    [0.5, 1.5].map(monotoneCurve([0, 1, 2], [3, 1, 4])),
  ],
});
