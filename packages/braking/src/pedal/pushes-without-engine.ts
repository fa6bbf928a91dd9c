import { bracketedRoot, requireRange } from '@standstill/numerics';
import { boosterOutput } from '../foot-to-pressure/booster-output.ts';
import { linePressures } from '../foot-to-pressure/line-pressures.ts';
import { rodForce } from '../foot-to-pressure/rod-force.ts';
import type { VacuumBooster } from '../set-up/booster.ts';
import type { SetUp } from '../set-up/set-up.ts';
import { pedalTravel } from '../travel/pedal-travel.ts';

/** Room on both sides of the diaphragm at rest. */
export interface BoosterChambers {
  /** V_f, m³, vacuum side with hose and any tank, up to the check valve. */
  readonly vacuumVolume: number;
  /** V_d, m³, working side at rest. */
  readonly deadVolume: number;
}

export interface PushesWithoutEngineInput {
  /** With a vacuum booster, at the vacuum before the first push. */
  readonly setUp: SetUp & { readonly booster: VacuumBooster };
  readonly chambers: BoosterChambers;
  /** F_p, N at the pedal pad, every time. */
  readonly pedalForce: number;
  /** How many pushes. */
  readonly count: number;
  /** p_a, Pa, air pressure where the car is; 101325 where not given. */
  readonly ambientPressure?: number;
}

/** Index by index one push. */
export interface PushesWithoutEngine {
  /** Pa below ambient at rest, before each push. */
  readonly vacuum: Float64Array;
  /** Pa in the front brakes at the end of each push. */
  readonly frontPressure: Float64Array;
  /** Pa in the rear brakes at the end of each push. */
  readonly rearPressure: Float64Array;
  /** m at the pedal pad. */
  readonly travel: Float64Array;
}

/**
 * Answers what is left of the assist when the pedal is pushed again and again with the engine off.
 *
 * Equation: at the end of a push of rod travel x the vacuum side holds p V_f / (V_f − A x) and the working side what the
 * assist H needs, p_r = p_f + H / (A η); after it both sides share: p' = (p V_f + p_r (V_d + A x)) / (V_f + V_d).
 * Assumes: isothermal air, a tight check valve, full release between pushes, no air let in beyond what the assist needs.
 * Rod and diaphragm move alike; the booster's lost motion is not counted.
 * Valid: 1 to 50 pushes; vacuum side 0.1 to 30 liters, working side 0.01 to 5 liters; the diaphragm's sweep stays inside
 * 95 % of the vacuum side.
 *
 * @param input - set-up with a vacuum booster; chambers, m³; F_p, pedal force, N; count; p_a, air pressure, Pa
 * @returns vacuum before each push, Pa; pressures, Pa; travel, m
 * @throws OutOfRangeError where an input cannot be
 * Source: [textbook-formula]
 * @example
 * pushesWithoutEngine({ setUp: { ...exampleSetUp, booster: { kind: 'vacuum', gain: 4, jumpInForce: 150, diaphragmArea: 0.042, vacuum: 65000, efficiency: 0.95 } }, chambers: { vacuumVolume: 0.0025, deadVolume: 0.0003 }, pedalForce: 150, count: 3 }).vacuum[1] // => 46318.7
 */
export function pushesWithoutEngine(input: PushesWithoutEngineInput): PushesWithoutEngine {
  const { setUp, chambers, pedalForce, ambientPressure = 101_325 } = input;
  const count = requireRange('pushes', input.count, '', 1, 50);
  requireChambers(chambers, ambientPressure, setUp.booster.vacuum);
  const pushes = {
    vacuum: new Float64Array(count),
    frontPressure: new Float64Array(count),
    rearPressure: new Float64Array(count),
    travel: new Float64Array(count),
  };
  let vacuum = setUp.booster.vacuum;
  for (let push = 0; push < count; push += 1) {
    const end = endOfPush({ setUp, chambers, pedalForce, ambientPressure }, vacuum);
    pushes.vacuum[push] = vacuum;
    pushes.frontPressure[push] = end.front;
    pushes.rearPressure[push] = end.rear;
    pushes.travel[push] = end.travel;
    vacuum = end.vacuumAfter;
  }
  return pushes;
}

interface EndOfPush {
  readonly front: number;
  readonly rear: number;
  readonly travel: number;
  readonly vacuumAfter: number;
}

type Push = Required<Omit<PushesWithoutEngineInput, 'count'>>;

/** The rod goes as far as the pressure asks for at the vacuum that is left when it is there. */
function endOfPush({ setUp, chambers, pedalForce, ambientPressure }: Push, vacuum: number): EndOfPush {
  const { diaphragmArea, efficiency } = setUp.booster;
  const { vacuumVolume, deadVolume } = chambers;
  const atRest = ambientPressure - vacuum;
  const vacuumAt = (rod: number): number =>
    Math.max(0, ambientPressure - (atRest * vacuumVolume) / (vacuumVolume - diaphragmArea * rod));
  const withVacuum = (left: number) => ({ ...setUp, booster: { ...setUp.booster, vacuum: left } });
  const longest = (0.95 * vacuumVolume) / diaphragmArea;
  const over = (rod: number): number => rodTravel(withVacuum(vacuumAt(rod)), pedalForce) - rod;
  requireRange('rod travel of the booster', rodTravel(withVacuum(0), pedalForce), 'm', 0, longest);
  const rod = over(longest) >= 0 ? longest : bracketedRoot(over, { low: 0, high: longest, tolerance: 1e-9 });
  const pushed = withVacuum(vacuumAt(rod));
  const rodPush = rodForce({ pedal: setUp.pedal, force: pedalForce });
  const assist = boosterOutput({ booster: pushed.booster, rodForce: rodPush }).force - rodPush;
  const frontSide = ambientPressure - pushed.booster.vacuum;
  const workingSide = Math.min(ambientPressure, frontSide + assist / (diaphragmArea * efficiency));
  const air = atRest * vacuumVolume + workingSide * (deadVolume + diaphragmArea * rod);
  const after = Math.min(ambientPressure, air / (vacuumVolume + deadVolume));
  const { front, rear } = linePressures({ setUp: pushed, pedalForce });
  const { travel } = pedalTravel({ setUp: pushed, pedalForce });
  return { front, rear, travel, vacuumAfter: Math.max(0, ambientPressure - after) };
}

function rodTravel(setUp: SetUp, pedalForce: number): number {
  const { travel, parts } = pedalTravel({ setUp, pedalForce });
  return (travel - parts.freePlay - parts.flex) / setUp.pedal.ratio;
}

function requireChambers(chambers: BoosterChambers, ambientPressure: number, vacuum: number): void {
  requireRange('vacuum side of the booster', chambers.vacuumVolume, 'm³', 1e-4, 0.03);
  requireRange('working side of the booster', chambers.deadVolume, 'm³', 1e-5, 0.005);
  requireRange('air pressure', ambientPressure, 'Pa', 40_000, 110_000);
  requireRange('booster vacuum', vacuum, 'Pa', 0, ambientPressure);
}
