import { requireRange } from '@standstill/numerics';
import { brakeTorque } from '../corner/brake-torque.ts';
import type { AxleBrake } from '../set-up/axle-brake.ts';
import type { Road } from '../set-up/road.ts';
import type { SetUp } from '../set-up/set-up.ts';
import type { Tire } from '../set-up/tire.ts';
import { tirePeakForce } from '../tire/tire-peak-force.ts';
import { WaterGrip } from '../tire/water-grip.ts';
import { SlipForceTable } from './slip-force-table.ts';
import { Wheel } from './wheel.ts';

interface AxleFigures {
  readonly brake: AxleBrake;
  readonly tire: Tire;
  /** kg m², one wheel with its part of the driveline. */
  readonly inertia: number;
  /** N m on one wheel. */
  readonly engineDrag: number;
  readonly leftLoadShare: number;
  readonly road: Road;
}

/**
 * The four wheels of the full stop, their figures worked out once: front-left, front-right, rear-left, rear-right.
 *
 * Assumes: both wheels of an axle are built alike; a driveline turns with its wheels as if they turned alike.
 * Source: [gillespie], [pacejka]
 */
export class WheelFigures {
  readonly frontCurve = new SlipForceTable();
  readonly rearCurve = new SlipForceTable();
  readonly each: readonly [Wheel, Wheel, Wheel, Wheel] = [
    new Wheel(this.frontCurve),
    new Wheel(this.frontCurve),
    new Wheel(this.rearCurve),
    new Wheel(this.rearCurve),
  ];
  readonly frontWater = new WaterGrip();
  readonly rearWater = new WaterGrip();
  /** m, half of each track. */
  frontHalfTrack = 0;
  rearHalfTrack = 0;

  /** Whether there is water on the road, so that the tires' peaks depend on speed. */
  get areWet(): boolean {
    return this.frontWater.isWet;
  }

  /** Takes on a set-up on a road, for speeds up to `topSpeed`, m/s. */
  take({ car, frontBrake, rearBrake, frontTire, rearTire }: SetUp, road: Road, topSpeed: number): void {
    const { leftLoadShare, frontWheelInertia, rearWheelInertia } = car;
    const frontDrive = requireRange('front share of the driveline', car.frontDriveShare, '', 0, 1) / 2;
    const driveline = requireRange('driveline inertia', car.drivelineInertia, 'kg m²', 0, 200);
    const drag = requireRange('engine drag', car.engineDrag, 'N m', 0, 5000);
    requireRange('left share of static load', leftLoadShare, '', 0.2, 0.8);
    requireRange('wheel inertia', frontWheelInertia, 'kg m²', 0.01, 50);
    requireRange('wheel inertia', rearWheelInertia, 'kg m²', 0.01, 50);
    this.frontHalfTrack = requireRange('front track', car.frontTrack, 'm', 0.5, 3) / 2;
    this.rearHalfTrack = requireRange('rear track', car.rearTrack, 'm', 0.5, 3) / 2;
    const rearDrive = 0.5 - frontDrive;
    const frontInertia = frontWheelInertia + driveline * frontDrive;
    const rearInertia = rearWheelInertia + driveline * rearDrive;
    const shared = { leftLoadShare, road };
    const front = { brake: frontBrake, tire: frontTire, inertia: frontInertia };
    const rear = { brake: rearBrake, tire: rearTire, inertia: rearInertia };
    this.#takeAxle(0, { ...front, ...shared, engineDrag: drag * frontDrive });
    this.#takeAxle(2, { ...rear, ...shared, engineDrag: drag * rearDrive });
    this.frontCurve.take(frontTire);
    this.rearCurve.take(rearTire);
    this.frontWater.take(frontTire, road, topSpeed);
    this.rearWater.take(rearTire, road, topSpeed);
    this.meetWater(0);
  }

  /** Looks up what water leaves of the tires' peaks at a speed, m/s. */
  meetWater(speed: number): void {
    const size = Math.abs(speed);
    this.each[0].grip = this.each[1].grip = this.frontWater.factorAt(size);
    this.each[2].grip = this.each[3].grip = this.rearWater.factorAt(size);
  }

  /** N that the tire of a wheel could give at a load, N, and a speed, m/s. */
  peakOf(at: number, load: number, speed: number): number {
    const water = at < 2 ? this.frontWater : this.rearWater;
    return this.each[at]!.peakAt(load) * water.factorAt(speed);
  }

  #takeAxle(first: number, { brake, tire, inertia, engineDrag, leftLoadShare, road }: AxleFigures): void {
    const radius = requireRange('rolling radius', tire.rollingRadius, 'm', 0.1, 1);
    const relaxation = requireRange('relaxation length', tire.relaxationLength, 'm', 0.02, 2);
    const { pushOutPressure } = brake.caliper;
    const gain = brakeTorque({ brake, pressure: pushOutPressure + 1e6, friction: 1 }) / 1e6;
    const exponent = 1 - tire.loadSensitivity;
    const atNominal = tirePeakForce({ tire, load: tire.nominalLoad, surfaceFactor: road.surfaceFactor });
    const scale = atNominal * Math.pow(tire.nominalLoad, -exponent);
    for (let at = first; at < first + 2; at += 1) {
      const wheel = this.each[at]!;
      wheel.loadShare = at === first ? leftLoadShare : 1 - leftLoadShare;
      wheel.radius = radius;
      wheel.perInertia = 1 / inertia;
      wheel.perRelaxation = 1 / relaxation;
      wheel.gain = gain;
      wheel.pushOut = pushOutPressure;
      wheel.engineDrag = engineDrag;
      wheel.takePeak(scale, exponent);
    }
  }
}
