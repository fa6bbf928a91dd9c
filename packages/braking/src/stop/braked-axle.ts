import { linearTable, requireRange } from '@standstill/numerics';
import { brakeTorque } from '../corner/brake-torque.ts';
import { padFriction } from '../corner/pad-friction.ts';
import { coolingCoefficients } from '../heat/cooling/cooling-coefficients.ts';
import { rotorHeatShare } from '../heat/rotor-heat-share.ts';
import { RotorState } from '../heat/rotor-state.ts';
import type { AxleHeat } from '../heat/axle-heat.ts';
import type { RotorStep } from '../heat/rotor-step.ts';
import type { AxleBrake } from '../set-up/axle-brake.ts';
import { requireTireFigures } from '../tire/tire-peak-force.ts';
import { WaterGrip } from '../tire/water-grip.ts';
import type { AxleParts } from './axle-parts.ts';

/** What the wheels of an axle do: follow the brake, be held at their limit by a control, or slide. */
export type Grip = 'rolling' | 'held' | 'locked';

/** Pad faces and rotor faces of an axle: two brakes with two sides. */
const faces = 4;
/** How far from the last load the power law is carried by its series, relative. */
const anchorReach = 0.09;

/**
 * Both wheels of an axle in the quick stop: figures of brake and tire taken from the set-up once, and the state of the
 * present instant. Left and right are treated alike; with an uneven load the axle's peak is the sum of its two tires'.
 *
 * Allocates nothing after it is made, but for what the set-up's own functions do in `take`.
 * Source: [gillespie], [power-law-load]
 */
export class BrakedAxle {
  readonly heat: AxleHeat;
  /** N of road force per Pa above push-out, at pad friction 1. */
  forcePerPressure = 0;
  /** p_0, Pa. */
  pushOutPressure = 0;
  /** (2 J + J_d) / r², kg: wheels and what of the driveline turns with them. */
  inertia = 0;
  /** M_e / r, N at the road by which the engine holds back. */
  engineForce = 0;
  /** F_peak = λ_water · scale · load^exponent; scale in N^(1 − exponent). */
  peakScale = 0;
  peakExponent = 1;
  /** 1, twice the lighter tire's peak over the peak of both. */
  lighterShare = 1;
  /** μ_slide / μ_peak, 1. */
  slideRatio = 1;

  /** μ of the pads, 1, now. */
  friction = 0;
  /** N on the road, and its slope over deceleration, kg. */
  load = 0;
  peak = 0;
  peakSlope = 0;
  /** N that brake and engine ask of the tires, and its slope, kg. */
  demand = 0;
  demandSlope = 0;
  /** N that the tires give, and its slope, kg. */
  force = 0;
  forceSlope = 0;
  grip: Grip = 'rolling';
  /** N of the stopping force that slip, the engine and the brakes take; set by `divide`. */
  intoSlip = 0;
  intoEngine = 0;
  intoBrakes = 0;
  /** Whether the tires give what the line pressure asks. */
  followsPressure = true;
  readonly water = new WaterGrip();

  #padTemperatures: readonly number[] = [];
  #padFrictions: readonly number[] = [];
  #peakSlip = 0.1;
  #elasticSlip = 0.05;
  #rotorShare = 1;
  #frictionFixed = false;
  #waterFactor = 1;
  #anchorLoad = 1e-9;
  #anchorPeak = 0;
  #first = 1;
  #second = 0;
  #third = 0;
  #fourth = 0;
  #fifth = 0;
  readonly #step: RotorStep = {
    duration: 0,
    fluxAtStart: 0,
    fluxAtEnd: 0,
    faceCoefficient: 0,
    ventCoefficient: 0,
    airTemperature: 20,
  };

  /**
   * @param layers - layers of the rotor's half thickness, 1
   * @param heat - what keeps the heat; the rotors alone where left out
   */
  constructor(layers: number, heat: AxleHeat = new RotorState(layers)) {
    this.heat = heat;
  }

  /** Takes on the parts of an axle, for a stop from `topSpeed`, m/s. */
  take(parts: AxleParts, topSpeed: number): void {
    const { brake, tire } = parts;
    const radius = requireRange('rolling radius', tire.rollingRadius, 'm', 0.1, 1);
    const pressure = brake.caliper.pushOutPressure + 1e6;
    this.forcePerPressure = (2 * brakeTorque({ brake, pressure, friction: 1 })) / (1e6 * radius);
    this.pushOutPressure = brake.caliper.pushOutPressure;
    this.#takeTurning(parts, radius);
    this.#takeTire(parts);
    this.water.take(tire, parts.road, topSpeed);
    this.standAt(topSpeed);
    this.#padTemperatures = brake.pad.frictionTemperatures;
    this.#padFrictions = brake.pad.frictions;
    this.heat.use(brake);
    this.#rotorShare = this.heat.sharesHeat ? 1 : rotorHeatShare(brake);
    this.grip = 'rolling';
  }

  #takeTurning({ wheelInertia, drivelineInertia, engineDrag }: AxleParts, radius: number): void {
    const wheels = 2 * requireRange('wheel inertia', wheelInertia, 'kg m²', 0, 50);
    const driveline = requireRange('driveline inertia', drivelineInertia, 'kg m²', 0, 100);
    this.inertia = (wheels + driveline) / (radius * radius);
    this.engineForce = requireRange('engine drag', engineDrag, 'N m', 0, 5000) / radius;
  }

  #takeTire({ tire, road, leftLoadShare }: AxleParts): void {
    const left = requireRange('left share of static load', leftLoadShare, '', 0.2, 0.8);
    requireTireFigures(tire, road.surfaceFactor);
    const exponent = 1 - tire.loadSensitivity;
    const leftPart = Math.pow(left, exponent);
    const rightPart = left === 0.5 ? leftPart : Math.pow(1 - left, exponent);
    const split = leftPart + rightPart;
    this.#takeExponent(exponent);
    const perLoad = Math.pow(tire.nominalLoad, tire.loadSensitivity);
    this.peakScale = road.surfaceFactor * tire.peakFriction * perLoad * split;
    this.lighterShare = (2 * Math.min(leftPart, rightPart)) / split;
    this.slideRatio = requireRange('slide over peak friction', tire.slideRatio, '', 0.01, 1);
    this.#peakSlip = requireRange('slip at the peak', tire.peakSlip, '', 0.001, 1);
    const stiffness = requireRange('slip stiffness over peak force', tire.slipStiffness, '', 1e-3, 1e4);
    this.#elasticSlip = Math.min(1 / stiffness, this.#peakSlip);
  }

  /** Keeps the peak friction that the tires have at a load, N, at every load. */
  forgetLoadSensitivity(staticLoad: number): void {
    if (staticLoad > 0) this.peakScale *= Math.pow(staticLoad, this.peakExponent - 1);
    this.#takeExponent(1);
  }

  /** Reads the pads' friction at a temperature, °C, and keeps it where `fixed`. */
  startFriction(pad: AxleBrake['pad'], fixed: boolean): void {
    this.friction = padFriction({ pad, temperature: this.heat.interfaceTemperature });
    this.#frictionFixed = fixed;
  }

  /** Sets the cooling that holds through the stop, for a speed, m/s. */
  coolAt(speed: number, { brake, tire, road }: AxleParts): void {
    const temperature = this.heat.interfaceTemperature;
    const { rollingRadius } = tire;
    const cooling = coolingCoefficients({ rotor: brake.rotor, road, speed, rollingRadius, temperature });
    this.#step.faceCoefficient = cooling.face;
    this.#step.ventCoefficient = cooling.vent;
    this.#step.airTemperature = road.airTemperature;
  }

  /** Lets the pads be as warm as a face temperature, °C, says. */
  warmPads(temperature: number): void {
    if (!this.#frictionFixed) {
      this.friction = linearTable(this.#padTemperatures, this.#padFrictions, temperature);
    }
  }

  /** Lets the tires stand on the road's water at a speed, m/s; `carry` is to be called next. */
  standAt(speed: number): void {
    this.#waterFactor = this.water.factorAt(speed);
  }

  /** Puts a load on the tires, N, with its slope over deceleration, kg. */
  carry(load: number, slope: number): void {
    this.load = load;
    if (load <= 0) {
      this.peak = 0;
      this.peakSlope = 0;
      return;
    }
    let off = load / this.#anchorLoad - 1;
    if (off < -anchorReach || off > anchorReach) {
      this.#anchorAtLoad();
      off = 0;
    }
    const bend = this.#third + off * (this.#fourth + off * this.#fifth);
    const dry = this.#anchorPeak * (1 + off * (this.#first + off * (this.#second + off * bend)));
    this.peak = this.#waterFactor * dry;
    this.peakSlope = ((this.peakExponent * this.peak) / load) * slope;
  }

  /** Lets the power law be carried from the present load on. */
  #anchorAtLoad(): void {
    this.#anchorLoad = this.load;
    this.#anchorPeak = this.peakScale * Math.pow(this.load, this.peakExponent);
  }

  /** The power law's first five terms around a load; they serve within `anchorReach` of it, to 1e-8. */
  #takeExponent(exponent: number): void {
    this.peakExponent = exponent;
    this.#first = exponent;
    this.#second = (exponent * (exponent - 1)) / 2;
    this.#third = (this.#second * (exponent - 2)) / 3;
    this.#fourth = (this.#third * (exponent - 3)) / 4;
    this.#fifth = (this.#fourth * (exponent - 4)) / 5;
    this.#anchorLoad = 1e-9;
  }

  /**
   * N by which the mean brake force over a step is above the mean of its ends, for line pressures, Pa, at the start, the
   * middle and the end (Simpson's rule); nothing where the tires do not follow it.
   */
  bendOver(startPressure: number, middlePressure: number, endPressure: number): number {
    if (!this.followsPressure) return 0;
    const low = this.pushOutPressure;
    const ends = Math.max(low, startPressure) + Math.max(low, endPressure);
    const over = Math.max(low, middlePressure) - 0.5 * ends;
    return (2 / 3) * this.forcePerPressure * this.friction * over;
  }

  /** Presses the pads with a line pressure, Pa, while the car slows at `deceleration`, m/s². */
  press(pressure: number, deceleration: number): void {
    const over = pressure - this.pushOutPressure;
    const brakeSide = over > 0 ? this.forcePerPressure * this.friction * over : 0;
    this.demand = brakeSide + this.engineForce - this.inertia * deceleration;
    this.demandSlope = -this.inertia;
  }

  /** The tires give what the brake asks. */
  give(): void {
    this.force = this.demand;
    this.forceSlope = this.demandSlope;
    this.followsPressure = true;
  }

  /** The tires give a share of their peak, 1. */
  giveShare(share: number): void {
    this.force = share * this.peak;
    this.forceSlope = share * this.peakSlope;
    this.followsPressure = false;
  }

  /** The tires give a part, 1, of what both axles ask, N, with its slope, kg. */
  givePart(part: number, asked: number, slope: number): void {
    this.force = part * asked;
    this.forceSlope = part * slope;
    this.followsPressure = true;
  }

  /** N of brake force per Pa at a line pressure, Pa: nothing below push-out. */
  demandRise(pressure: number): number {
    return pressure > this.pushOutPressure ? this.forcePerPressure * this.friction : 0;
  }

  /** Moves everything along its slope, for a change of deceleration, m/s². */
  follow(change: number): void {
    this.force += this.forceSlope * change;
    this.demand += this.demandSlope * change;
    this.peak += this.peakSlope * change;
  }

  /**
   * N of the tires' force that goes into slip rather than into the brake: κ F.
   *
   * Equation: κ = F/(K F_peak) + (κ_p − 1/K)(F/F_peak)^4 while rolling, κ_p while held, 1 while locked: our own smooth
   * curve through the slope at zero and the peak; it only divides heat between rotor and tire.
   */
  slipForce(): number {
    if (this.grip === 'locked') return this.force;
    if (this.grip === 'held') return this.#peakSlip * this.force;
    const use = this.peak > 0 ? Math.min(1, Math.max(0, this.force / this.peak)) : 0;
    const squared = use * use;
    const slip = this.#elasticSlip * use + (this.#peakSlip - this.#elasticSlip) * squared * squared;
    return slip * this.force;
  }

  /** N that the axle takes out of the motion of car and wheels, while the car slows at `deceleration`, m/s². */
  stoppingForce(deceleration: number): number {
    return this.grip === 'locked' ? this.force : this.force + this.inertia * deceleration;
  }

  /**
   * Divides the stopping force between slip, engine and brakes, while the car slows at `deceleration`, m/s². The engine takes
   * its drag, less its part of what goes into slip, and never more than the tires pass on; nothing where they are locked.
   */
  divide(deceleration: number): void {
    const stopping = this.stoppingForce(deceleration);
    const slip = this.slipForce();
    const atWheels = stopping - slip;
    this.intoSlip = slip;
    this.intoEngine = 0;
    if (this.engineForce > 0 && this.grip !== 'locked') {
      this.intoEngine = stopping > this.engineForce ? (atWheels * this.engineForce) / stopping : atWheels;
    }
    this.intoBrakes = atWheels - this.intoEngine;
  }

  /** N of the stopping force that the brakes turn into heat, while the car slows at `deceleration`, m/s². */
  brakesTake(deceleration: number): number {
    this.divide(deceleration);
    return this.intoBrakes;
  }

  /** kg, slope of the stopping force over deceleration. */
  stoppingSlope(): number {
    return this.grip === 'locked' ? this.forceSlope : this.forceSlope + this.inertia;
  }

  /** J of a wheel pair and its driveline that turn at a speed, m/s; nothing where they are locked. */
  turningEnergy(speed: number): number {
    return this.grip === 'locked' ? 0 : 0.5 * this.inertia * speed * speed;
  }

  /** 1, share of the friction heat that the rotors take. */
  get rotorShare(): number {
    return this.#rotorShare * this.heat.rotorShare;
  }

  /** Warms the rotors over one step by the brakes' mean power, W, that rises by twice `halfRise` from start to end. */
  warm(duration: number, meanPower: number, halfRise: number): void {
    const toFlux = this.#rotorShare / (faces * this.heat.sweptArea);
    this.#step.duration = duration;
    this.#step.fluxAtStart = (meanPower - halfRise) * toFlux;
    this.#step.fluxAtEnd = (meanPower + halfRise) * toFlux;
    this.heat.step(this.#step);
  }
}
