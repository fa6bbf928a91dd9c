import { requireRange } from '@standstill/numerics';
import type { AxleBrake } from '../../set-up/axle-brake.ts';
import type { AxleHeat } from '../axle-heat.ts';
import { kelvinAtZeroCelsius, stefanBoltzmann } from '../cooling/radiated-flux.ts';
import type { RotorStep } from '../rotor-step.ts';
import { enthalpyZero } from '../specific-enthalpy.ts';
import { temperatureOfEnthalpy } from '../temperature-of-enthalpy.ts';
import { Contact } from './contact.ts';
import { emptyCornerGrid, fillCornerGrid, type CornerGrid } from './corner-grid.ts';
import { factorWeb, solveWeb } from './heat-web.ts';

/** γ of the two-stage scheme, and how far the second stage starts along the first stage's slope. */
const gamma = 1 - Math.SQRT1_2;
const carry = (1 - gamma) / gamma;
/** W/(m K) of the air in the gap between pad and rotor. */
const airConductivity = 0.03;
/** m, least gap that is reckoned with. */
const leastGap = 2e-5;
/** Emissivity of two oxidized faces that look at each other (assumed). */
const gapEmissivity = 0.7;
/** Where caliper, fluid, hat and hub stand between the air and a rotor that has been driven warm, 1 (assumed). */
const warmed = { hub: 0.3, hat: 0.8, plate: 0.75, piston: 0.5, body: 0.35, fluid: 0.4 } as const;

/**
 * The temperatures of a whole corner and how they change: rotor, hat, hub, pad, plate, pistons, caliper body and fluid. The
 * split of the friction heat between rotor and pad is not put in; it follows from the contact, and a hot pad gives heat back.
 *
 * Equation: as `RotorState`, with every node of `CornerGrid` in one implicit web; the faces by `Contact`. Released pads:
 * h = k_air / gap + 4 ε σ T³ instead of the contact's.
 * Assumes: as `fillCornerGrid`; properties of all but iron constant. The fluid is one lump behind the pistons and does not
 * boil: what it would reach is told. Used in schedules and rows of stops; a single quick stop is over before it matters.
 * Valid: any step length: heat stored plus heat lost is heat put in, to rounding.
 *
 * Allocates nothing after it is made. `use` hands it a brake, `warmTo` or `warmAsDriven` temperatures, `step` a stretch of
 * time; `RotorStep`'s flux is here all of the friction heat.
 * Source: [alexander-1977], [carslaw-jaeger], [barber-1967]
 */
export class CornerState implements AxleHeat {
  /** True: the friction heat of the steps is shared out here. */
  readonly sharesHeat = true;
  /** °C of each node, by `places`. */
  readonly temperatures: Float64Array;
  /** °C at the rotor's rubbing face, and at the pad's. */
  interfaceTemperature = enthalpyZero;
  padFaceTemperature = enthalpyZero;
  /** True while the pads are pressed. */
  pressed = true;
  /** W/(m² K), from the caliper's body to the air. */
  bodyCoefficient = 10;
  /** J of half a corner since the account was opened: put in, lost to the air, and gone into the pad. */
  putIn = 0;
  lost = 0;
  intoPad = 0;
  readonly #grid: CornerGrid;
  readonly #contact = new Contact();
  readonly #enthalpies: Float64Array;
  readonly #before: Float64Array;
  readonly #after: Float64Array;

  /**
   * @param layers - layers of the half rotor, 1
   * @param padLayers - layers of the pad, 1
   */
  constructor(layers: number, padLayers = 4) {
    this.#grid = emptyCornerGrid(layers, padLayers);
    const most = this.#grid.heats.length;
    this.temperatures = new Float64Array(most);
    this.#enthalpies = new Float64Array(most);
    this.#before = new Float64Array(most);
    this.#after = new Float64Array(most);
  }

  /** Takes on a brake; temperatures stay where they are, as long as the nodes are as many. */
  use(brake: AxleBrake): void {
    const nodes = this.#grid.nodes;
    fillCornerGrid(this.#grid, brake);
    this.#contact.takeShare(this.#grid.barberShare);
    if (nodes !== this.#grid.nodes) this.warmTo(enthalpyZero);
    else this.#holdTemperatures();
  }

  /** Sets every node to one temperature, °C, and opens the account. */
  warmTo(temperature: number): void {
    requireRange('brake temperature', temperature, '°C', -60, 1500);
    this.temperatures.fill(temperature);
    this.#restart();
  }

  /** Sets a rotor's temperature, °C, and the others to where driving has brought them by then, in air of a temperature, °C. */
  warmAsDriven(temperature: number, air: number): void {
    this.warmTo(temperature);
    const { places, padLayers } = this.#grid;
    const at = (share: number): number => air + share * (temperature - air);
    for (let i = 0; i < padLayers; i += 1)
      this.temperatures[places.padFace + i] = at(1 - ((1 - warmed.plate) * (i + 0.5)) / padLayers);
    for (const key of Object.keys(warmed) as (keyof typeof warmed)[])
      this.temperatures[places[key]] = at(warmed[key]);
    this.#restart();
  }

  #restart(): void {
    const { places } = this.#grid;
    this.#holdTemperatures();
    this.interfaceTemperature = this.temperatures[places.rotorFace]!;
    this.padFaceTemperature = this.temperatures[places.padFace]!;
    this.openAccount();
  }

  #holdTemperatures(): void {
    const { nodes, heats, heatSlopes } = this.#grid;
    for (let i = 0; i < nodes; i += 1) {
      const rise = this.temperatures[i]! - enthalpyZero;
      this.#enthalpies[i] = rise * (heats[i]! + 0.5 * heatSlopes[i]! * rise);
    }
  }

  /** Begins a new account of heat put in and lost. */
  openAccount(): void {
    this.putIn = 0;
    this.lost = 0;
    this.intoPad = 0;
  }

  /** 1, share of the friction heat since the account was opened that went into the rotor; 1 where there was none. */
  get rotorShare(): number {
    return this.putIn > 0 ? 1 - this.intoPad / this.putIn : 1;
  }

  /** J per m² of one swept face, lost to the air by all of the half corner since the account was opened. */
  get lostPerArea(): number {
    return this.lost / this.sweptArea;
  }

  /** m², swept area of one face. */
  get sweptArea(): number {
    return this.#grid.rotor.area;
  }

  /** J held above 20 °C by half a corner. */
  energyStored(): number {
    let sum = 0;
    for (let i = 0; i < this.#grid.nodes; i += 1) sum += this.#enthalpies[i]!;
    return sum;
  }

  /** °C that the ring would have with its heat spread evenly. */
  bulkTemperature(): number {
    const { places, heats, rotor } = this.#grid;
    let held = 0;
    let heat = 0;
    for (let i = places.rotorLast; i <= places.rotorFace; i += 1) {
      held += this.#enthalpies[i]!;
      heat += heats[i]!;
    }
    return temperatureOfEnthalpy(rotor, (held * rotor.specificHeat) / heat);
  }

  /** °C, mean through the pad's friction material. */
  padTemperature(): number {
    const { places, heats } = this.#grid;
    let sum = 0;
    let heat = 0;
    for (let i = places.padFace; i < places.plate; i += 1) {
      sum += heats[i]! * this.temperatures[i]!;
      heat += heats[i]!;
    }
    return sum / heat;
  }

  /** °C of the fluid behind the pistons. */
  get fluidTemperature(): number {
    return this.temperatures[this.#grid.places.fluid]!;
  }

  /** °C of the caliper's body. */
  get bodyTemperature(): number {
    return this.temperatures[this.#grid.places.body]!;
  }

  /** °C of the hat. */
  get hatTemperature(): number {
    return this.temperatures[this.#grid.places.hat]!;
  }

  /** Carries the temperatures over one stretch of time. */
  step(step: RotorStep): void {
    const grid = this.#grid;
    const { web, nodes } = grid;
    const weight = gamma * step.duration;
    const area = grid.rotor.area;
    const offset = area * this.#joinFaces(step);
    this.#open(step);
    factorWeb(web, nodes, weight);
    const inside = area * (step.fluxAtStart + gamma * (step.fluxAtEnd - step.fluxAtStart));
    this.#contact.heat(inside, offset);
    this.#solveStage(1, weight);
    this.#book(carry * weight, inside);
    const atEnd = area * step.fluxAtEnd;
    this.#contact.heat(atEnd, offset);
    this.#solveStage(carry, weight);
    this.#book(weight, atEnd);
    this.#close(step.airTemperature);
    this.#readFaces(step.airTemperature);
  }

  /** Joins the faces for a step; answers what the rotor's face loses at an excess of zero, W/m². */
  #joinFaces(step: RotorStep): number {
    const { rotor, rotorInside, padInside, web, places } = this.#grid;
    const face = this.interfaceTemperature + kelvinAtZeroCelsius;
    const air = step.airTemperature + kelvinAtZeroCelsius;
    const strength = rotor.uncoveredEmissivity * stefanBoltzmann;
    const cubed = face * face * face;
    const slope = 4 * strength * cubed;
    const toAir = rotor.area * (rotor.uncovered * step.faceCoefficient + slope);
    this.#contact.join(rotorInside, padInside, this.#across(), toAir);
    web.near[places.rotorFace] = this.#contact.link;
    return strength * (cubed * face - air * air * air * air) - slope * (face - air);
  }

  /** W/K from face to face. */
  #across(): number {
    const { padArea, contactConductance, clearance } = this.#grid;
    if (this.pressed) return padArea * contactConductance;
    const mean = 0.5 * (this.interfaceTemperature + this.padFaceTemperature) + kelvinAtZeroCelsius;
    const radiation = 4 * gapEmissivity * stefanBoltzmann * mean * mean * mean;
    return padArea * (airConductivity / Math.max(leastGap, clearance) + radiation);
  }

  /** Writes down the excess over the air, the capacities and the losses at the start of the step. */
  #open({ airTemperature, faceCoefficient, ventCoefficient }: RotorStep): void {
    const { nodes, heats, heatSlopes, faceAreas, ventAreas, web, places, bodyArea } = this.#grid;
    const { capacities, losses } = web;
    const temperatures = this.temperatures;
    const before = this.#before;
    const after = this.#after;
    for (let i = 0; i < nodes; i += 1) {
      const temperature = temperatures[i]!;
      const excess = temperature - airTemperature;
      before[i] = excess;
      after[i] = excess;
      capacities[i] = heats[i]! + heatSlopes[i]! * (temperature - enthalpyZero);
    }
    for (let i = 0; i <= places.rotorFace; i += 1)
      losses[i] = faceCoefficient * faceAreas[i]! + ventCoefficient * ventAreas[i]!;
    losses[places.rotorFace] = losses[places.rotorFace]! + this.#contact.rotorLoss;
    losses[places.padFace] = this.#contact.padLoss;
    losses[places.body] = this.bodyCoefficient * bodyArea;
  }

  /** Solves one stage; it starts `start` times along the slope of the stage before. */
  #solveStage(start: number, weight: number): void {
    const { nodes, web, places } = this.#grid;
    web.sources[places.rotorFace] = weight * this.#contact.rotorSource;
    web.sources[places.padFace] = weight * this.#contact.padSource;
    solveWeb(web, nodes, this.#before, this.#after, start);
  }

  /** Books what a stage puts in and what it loses. */
  #book(weight: number, friction: number): void {
    const { web, places } = this.#grid;
    const after = this.#after;
    const rotor = after[places.rotorFace]!;
    const pad = after[places.padFace]!;
    const faces = this.#contact.toAir(rotor, pad, friction) - this.#contact.rotorLoss * rotor;
    let lost = faces + web.losses[places.body]! * after[places.body]!;
    for (let i = 0; i <= places.rotorFace; i += 1) lost += web.losses[i]! * after[i]!;
    this.putIn += weight * friction;
    this.lost += weight * lost;
    this.intoPad += weight * this.#contact.intoPad(rotor, pad);
  }

  /** Turns what each node took up into heat held, and that into a temperature; only iron has to be worked out. */
  #close(airTemperature: number): void {
    const { nodes, web, heats, heatSlopes, places } = this.#grid;
    const { capacities } = web;
    const temperatures = this.temperatures;
    const enthalpies = this.#enthalpies;
    const after = this.#after;
    const before = this.#before;
    for (let i = 0; i < nodes; i += 1) {
      const enthalpy = enthalpies[i]! + capacities[i]! * (after[i]! - before[i]!);
      enthalpies[i] = enthalpy;
      temperatures[i] = airTemperature + after[i]!;
    }
    for (let i = places.hat; i <= places.rotorFace; i += 1) {
      const heat = heats[i]!;
      const enthalpy = enthalpies[i]!;
      const root = Math.sqrt(heat * heat + 2 * heatSlopes[i]! * enthalpy);
      temperatures[i] = enthalpyZero + (2 * enthalpy) / (heat + root);
    }
  }

  /** The rotor's face by a parabola, as `RotorState`; the pad's by its half layer. */
  #readFaces(airTemperature: number): void {
    const { places, web, rotorInside } = this.#grid;
    const first = this.temperatures[places.rotorFace]!;
    const pad = this.temperatures[places.padFace]!;
    const rotorExcess = first - airTemperature;
    const padExcess = pad - airTemperature;
    const into = this.#contact.intoRotor(rotorExcess, padExcess);
    const inwards = web.near[places.rotorFace - 1]! * (first - this.temperatures[places.rotorFace - 1]!);
    this.interfaceTemperature = first + ((2 / 3) * into + inwards / 3) / rotorInside;
    this.padFaceTemperature = airTemperature + this.#contact.padFace(rotorExcess, padExcess);
  }
}
