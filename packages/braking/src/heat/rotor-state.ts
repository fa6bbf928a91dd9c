import { requireRange } from '@standstill/numerics';
import type { AxleHeat } from './axle-heat.ts';
import { kelvinAtZeroCelsius, stefanBoltzmann } from './cooling/radiated-flux.ts';
import { HeatChain } from './heat-chain.ts';
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
  /** W/m²: what the outer face would lose at an excess of zero, by the straight line through its present loss. */
  #faceOffset = 0;
  /** 1, share of the flux at the face that goes past its loss. */
  #through = 1;

  /** @param layers - how many layers the half rotor (or one cheek) is cut into, 1 */
  constructor(layers: number) {
    this.#grid = emptyRotorGrid(layers);
    this.#chain = new HeatChain(layers + 1);
    this.temperatures = new Float64Array(layers + 1);
    this.#enthalpies = new Float64Array(layers + 1);
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
    const chain = this.#chain;
    const { fluxAtStart, fluxAtEnd } = step;
    chain.weight = gamma * step.duration;
    chain.ventCoefficient = step.ventCoefficient;
    this.#lookAtFace(step);
    this.#open(step);
    chain.factor(this.#grid);
    chain.start = 1;
    this.#solveStage(fluxAtStart + gamma * (fluxAtEnd - fluxAtStart), carry);
    chain.start = carry;
    this.#solveStage(fluxAtEnd, 1);
    this.#close();
    this.#readFace(step);
  }

  /** The straight line through the outer face's present loss. */
  #lookAtFace({ airTemperature, faceCoefficient }: RotorStep): void {
    const { uncovered, uncoveredEmissivity, faceResistance } = this.#grid;
    const face = this.interfaceTemperature + kelvinAtZeroCelsius;
    const air = airTemperature + kelvinAtZeroCelsius;
    const strength = uncoveredEmissivity * stefanBoltzmann;
    const cubed = face * face * face;
    const radiationSlope = 4 * strength * cubed;
    const radiated = strength * (cubed * face - air * air * air * air);
    this.#faceOffset = radiated - radiationSlope * (face - air);
    const slope = uncovered * faceCoefficient + radiationSlope;
    this.#through = 1 / (1 + slope * faceResistance);
    this.#chain.faceConductance = slope * this.#through;
  }

  /** Writes down the excess over the air and the capacities at the start of the step. */
  #open({ airTemperature }: RotorStep): void {
    const { nodes, masses, specificHeat, specificHeatSlope } = this.#grid;
    const { before, after, capacities } = this.#chain;
    const temperatures = this.temperatures;
    for (let i = 0; i < nodes; i += 1) {
      const temperature = temperatures[i]!;
      before[i] = temperature - airTemperature;
      after[i] = temperature - airTemperature;
      capacities[i] = masses[i]! * (specificHeat + specificHeatSlope * (temperature - enthalpyZero));
    }
  }

  /** Solves one stage under a flux, W/m², and books what it puts in and loses, with its share of the weight, 1. */
  #solveStage(flux: number, share: number): void {
    const chain = this.#chain;
    const source = (flux - this.#faceOffset) * this.#through;
    chain.source = source;
    chain.solve(this.#grid);
    const booked = share * chain.weight;
    this.putInPerArea += booked * flux;
    this.lostPerArea += booked * (flux - source + chain.faceConductance * chain.after[0]! + chain.ventLoss);
  }

  /** Turns what each node took up into heat held, and that into a temperature. */
  #close(): void {
    const grid = this.#grid;
    const { nodes, specificHeat, specificHeatSlope } = grid;
    const { before, after } = this.#chain;
    const temperatures = this.temperatures;
    const enthalpies = this.#enthalpies;
    for (let i = 0; i < nodes; i += 1) {
      const heat = specificHeat + specificHeatSlope * (temperatures[i]! - enthalpyZero);
      const enthalpy = enthalpies[i]! + heat * (after[i]! - before[i]!);
      enthalpies[i] = enthalpy;
      temperatures[i] = temperatureOfEnthalpy(grid, enthalpy);
    }
  }

  /** The face by a parabola through the first layer's mean, the flux into it and the flux out of it. */
  #readFace({ airTemperature }: RotorStep): void {
    const { faceResistance, conductances } = this.#grid;
    const { source, faceConductance } = this.#chain;
    const first = this.temperatures[0]!;
    const intoFace = source - faceConductance * (first - airTemperature);
    const inwards = conductances[0]! * (first - this.temperatures[1]!);
    this.interfaceTemperature = first + faceResistance * ((2 / 3) * intoFace + inwards / 3);
  }
}
