import { requireRange } from '@standstill/numerics';
import type { AxleHeat } from './axle-heat.ts';
import { kelvinAtZeroCelsius, stefanBoltzmann } from './cooling/radiated-flux.ts';
import { emptyHeatChain, factorChain, solveChain, type HeatChain } from './heat-chain.ts';
import { emptyRotorGrid, fillRotorGrid, type RotorGrid } from './rotor-grid.ts';
import type { RotorStep } from './rotor-step.ts';
import { enthalpyZero, specificEnthalpy } from './specific-enthalpy.ts';
import type { RotorWithPad } from './swept-area.ts';
import { temperatureOfEnthalpy } from './temperature-of-enthalpy.ts';

/** γ of the two-stage scheme. */
const gamma = 1 - Math.SQRT1_2;
/** (1 − γ) / γ: how far the second stage starts along the first stage's slope. */
const carry = (1 - gamma) / gamma;

/**
 * The temperatures through one rotor, and how they change: conduction from the rubbing face to mid-thickness (to the
 * vent of a vented rotor), with convection and radiation.
 *
 * Equation: ρ ∂h/∂t = ∂/∂x (k ∂T/∂x), h = c_0 (T − 20) + ½ c_1 (T − 20)²; finite volumes; in time the two-stage
 * stiffly accurate implicit Runge-Kutta scheme of second order with γ = 1 − 1/√2, the specific heat and the slope of
 * the radiation held through a step.
 * Assumes: both faces alike; heat spread evenly over the swept ring; what a pad covers does not cool; nothing flows
 * into the hat.
 * Valid: any step length: heat stored plus heat lost is heat put in, to rounding.
 *
 * Allocates nothing after it is made. `use` hands it a rotor, `warmTo` a temperature, `step` a stretch of time.
 * Source: [alexander-1977], [carslaw-jaeger]
 */
export class RotorState implements AxleHeat {
  /** False: the flux of a step is the rotor's share. */
  readonly sharesHeat = false;
  readonly rotorShare = 1;
  /** °C of each node: the face's layer first, then inwards; a vented rotor's vanes last. */
  readonly temperatures: Float64Array;
  /** °C at the rubbing face. */
  interfaceTemperature = enthalpyZero;
  /** J per m² of one swept face, lost to the air since `warmTo`. */
  lostPerArea = 0;
  /** J per m² of one swept face, put in since `warmTo`. */
  putInPerArea = 0;
  readonly #grid: RotorGrid;
  readonly #chain: HeatChain;
  readonly #enthalpies: Float64Array;
  /** Excess over the air, K: at the start of the step, and after the stage just solved. */
  readonly #before: Float64Array;
  readonly #after: Float64Array;
  /** W/m²: what the outer face would lose at an excess of zero, by the straight line through its present loss. */
  #faceOffset = 0;

  /** @param layers - how many layers the half rotor (or one cheek) is cut into, 1 */
  constructor(layers: number) {
    this.#grid = emptyRotorGrid(layers);
    this.#chain = emptyHeatChain(layers + 1);
    this.temperatures = new Float64Array(layers + 1);
    this.#enthalpies = new Float64Array(layers + 1);
    this.#before = new Float64Array(layers + 1);
    this.#after = new Float64Array(layers + 1);
  }

  /** Takes on a rotor and its pad; `warmTo` is to be called next. */
  use(parts: RotorWithPad): void {
    fillRotorGrid(this.#grid, parts);
  }

  /** Sets every node to one temperature, °C, and the account to zero. */
  warmTo(temperature: number): void {
    requireRange('rotor temperature', temperature, '°C', -60, 1500);
    this.temperatures.fill(temperature);
    this.#enthalpies.fill(specificEnthalpy(this.#grid, temperature));
    this.interfaceTemperature = temperature;
    this.lostPerArea = 0;
    this.putInPerArea = 0;
  }

  /** m², swept area of one face. */
  get sweptArea(): number {
    return this.#grid.area;
  }

  /** How many of `temperatures` are in use. */
  get nodes(): number {
    return this.#grid.nodes;
  }

  /** J held above 20 °C by the whole ring, both halves. */
  energyStored(): number {
    let sum = 0;
    for (let i = 0; i < this.#grid.nodes; i += 1) sum += this.#grid.masses[i]! * this.#enthalpies[i]!;
    return 2 * this.#grid.area * sum;
  }

  /** °C that the ring would have with its heat spread evenly. */
  bulkTemperature(): number {
    let mass = 0;
    for (let i = 0; i < this.#grid.nodes; i += 1) mass += this.#grid.masses[i]!;
    return temperatureOfEnthalpy(this.#grid, this.energyStored() / (2 * this.#grid.area * mass));
  }

  /** Carries the temperatures over one stretch of time. */
  step(step: RotorStep): void {
    const grid = this.#grid;
    const weight = gamma * step.duration;
    const faceSlope = this.#lookAtFace(step);
    const through = 1 / (1 + faceSlope * grid.faceResistance);
    const faceConductance = faceSlope * through;
    this.#open(step.airTemperature);
    factorChain(this.#chain, grid, weight, faceConductance, step.ventCoefficient);
    const fluxInside = step.fluxAtStart + gamma * (step.fluxAtEnd - step.fluxAtStart);
    let source = (fluxInside - this.#faceOffset) * through;
    this.#solveStage(1, weight * source);
    this.#book(carry * weight, fluxInside, source - faceConductance * this.#after[0]!, step.ventCoefficient);
    source = (step.fluxAtEnd - this.#faceOffset) * through;
    this.#solveStage(carry, weight * source);
    this.#book(weight, step.fluxAtEnd, source - faceConductance * this.#after[0]!, step.ventCoefficient);
    this.#close();
    this.#readFace(source - faceConductance * (this.temperatures[0]! - step.airTemperature));
  }

  /** The straight line through the outer face's present loss: sets its offset, answers its slope, W/(m² K). */
  #lookAtFace(step: RotorStep): number {
    const face = this.interfaceTemperature + kelvinAtZeroCelsius;
    const air = step.airTemperature + kelvinAtZeroCelsius;
    const strength = this.#grid.uncoveredEmissivity * stefanBoltzmann;
    const cubed = face * face * face;
    const radiationSlope = 4 * strength * cubed;
    const radiated = strength * (cubed * face - air * air * air * air);
    this.#faceOffset = radiated - radiationSlope * (face - air);
    return this.#grid.uncovered * step.faceCoefficient + radiationSlope;
  }

  /** Writes down the excess over the air and the capacities at the start of the step. */
  #open(airTemperature: number): void {
    const { nodes, masses, specificHeat, specificHeatSlope } = this.#grid;
    for (let i = 0; i < nodes; i += 1) {
      const temperature = this.temperatures[i]!;
      const excess = temperature - airTemperature;
      this.#before[i] = excess;
      this.#after[i] = excess;
      this.#chain.capacities[i] =
        masses[i]! * (specificHeat + specificHeatSlope * (temperature - enthalpyZero));
    }
  }

  /** Solves one stage; it starts `start` times along the slope of the stage before. */
  #solveStage(start: number, faceHeat: number): void {
    const { nodes } = this.#grid;
    const { capacities } = this.#chain;
    const after = this.#after;
    for (let i = 0; i < nodes; i += 1) {
      const before = this.#before[i]!;
      after[i] = capacities[i]! * (before + start * (after[i]! - before));
    }
    after[0] = after[0]! + faceHeat;
    solveChain(this.#chain, nodes, after);
  }

  /** Books what a stage puts in and what it loses at the face and in the vent. */
  #book(weight: number, flux: number, intoFace: number, ventCoefficient: number): void {
    let lost = flux - intoFace;
    if (ventCoefficient > 0) {
      const { nodes, ventShares } = this.#grid;
      for (let i = 0; i < nodes; i += 1) lost += ventCoefficient * ventShares[i]! * this.#after[i]!;
    }
    this.putInPerArea += weight * flux;
    this.lostPerArea += weight * lost;
  }

  /** Turns what each node took up into heat held, and that into a temperature. */
  #close(): void {
    const { nodes, specificHeat, specificHeatSlope } = this.#grid;
    for (let i = 0; i < nodes; i += 1) {
      const heat = specificHeat + specificHeatSlope * (this.temperatures[i]! - enthalpyZero);
      const enthalpy = this.#enthalpies[i]! + heat * (this.#after[i]! - this.#before[i]!);
      this.#enthalpies[i] = enthalpy;
      this.temperatures[i] = temperatureOfEnthalpy(this.#grid, enthalpy);
    }
  }

  /** The face by a parabola through the first layer's mean, the flux into it and the flux out of it. */
  #readFace(intoFace: number): void {
    const { faceResistance, conductances } = this.#grid;
    const first = this.temperatures[0]!;
    const inwards = conductances[0]! * (first - this.temperatures[1]!);
    this.interfaceTemperature = first + faceResistance * ((2 / 3) * intoFace + inwards / 3);
  }
}
