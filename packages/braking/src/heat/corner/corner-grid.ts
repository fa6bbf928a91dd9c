import { requireRange } from '@standstill/numerics';
import type { AxleBrake } from '../../set-up/axle-brake.ts';
import { usualHeatPath, type HeatPath } from '../../set-up/heat-path.ts';
import { emptyRotorGrid, fillRotorGrid, type RotorGrid } from '../rotor-grid.ts';
import { emptyHeatWeb, type HeatWeb } from './heat-web.ts';

/** How many times thicker each layer of the pad is than the one before it, from the face inwards. */
const padStretch = 1.9;
/** J/(kg K), steel of a pad's plate and of a hub (from memory). */
const steelHeat = 480;
/** J/(m³ K) of glycol fluid, 1050 kg/m³ of 2400 J/(kg K) (from memory). */
const fluidHeat = 1050 * 2400;
/** Least kg of plate, body and hat in half a corner, so that no node is without heat. */
const leastMass = { plate: 0.02, body: 0.1, hat: 0.03 } as const;
/** m² of body for a caliper of 1 kg; grows with the power 2/3 of its mass (common practice). */
const bodyAreaAtOneKilogram = 0.02;
/** m², faces of hat and hub that clamp each other (common practice). */
const jointArea = 0.012;
/** m² of a hub and its studs that the air reaches (common practice). */
const hubArea = 0.03;

/** Places of the nodes in half a corner. */
export interface CornerPlaces {
  readonly hub: 0;
  readonly hat: 1;
  /** The rotor's first layer, at the face; the further ones stand before it, the vanes before them. */
  rotorFace: number;
  /** The rotor's last node: vanes, or the layer furthest from the face. */
  rotorLast: number;
  /** The pad's first layer, at the face; the further ones stand after it. */
  padFace: number;
  plate: number;
  piston: number;
  body: number;
  fluid: number;
}

/**
 * Half a corner cut into nodes: hub, hat, half of the rotor, one pad, its plate, the pistons behind it, half of the
 * caliper's body and the fluid. Absolute figures, not per m².
 */
export interface CornerGrid {
  readonly rotor: RotorGrid;
  readonly web: HeatWeb;
  readonly padLayers: number;
  readonly places: CornerPlaces;
  nodes: number;
  /** J/K of each node at 20 °C, and J/K² by which it rises; only iron of the rotor rises. */
  readonly heats: Float64Array;
  readonly heatSlopes: Float64Array;
  /** m² of each node that the rotor's outer faces' coefficient holds for: hat and hub. */
  readonly faceAreas: Float64Array;
  /** m² of each node in the vent. */
  readonly ventAreas: Float64Array;
  /** W/K from the rotor's face and the pad's face to their first layers. */
  rotorInside: number;
  padInside: number;
  /** m², of one pad, and W/(m² K) while it is pressed. */
  padArea: number;
  contactConductance: number;
  /** m, gap between pad and rotor while it is not. */
  clearance: number;
  /** σ, 1, Barber's share. */
  barberShare: number;
  /** m² of half the caliper's body that the air reaches. */
  bodyArea: number;
}

/**
 * Answers an empty grid.
 *
 * @param rotorLayers - layers of the half rotor, 1
 * @param padLayers - layers of the pad, 1; 2 to 60
 * @returns the grid, to be filled by `fillCornerGrid`
 * @throws OutOfRangeError where a number cannot be
 * Source: [geometry]
 */
export function emptyCornerGrid(rotorLayers: number, padLayers: number): CornerGrid {
  requireRange('layers of the pad', padLayers, '', 2, 60);
  const most = rotorLayers + padLayers + 7;
  const array = (): Float64Array => new Float64Array(most);
  return {
    rotor: emptyRotorGrid(rotorLayers),
    web: emptyHeatWeb(most),
    padLayers,
    places: {
      hub: 0,
      hat: 1,
      rotorFace: 0,
      rotorLast: 0,
      padFace: 0,
      plate: 0,
      piston: 0,
      body: 0,
      fluid: 0,
    },
    nodes: 0,
    heats: array(),
    heatSlopes: array(),
    faceAreas: array(),
    ventAreas: array(),
    rotorInside: 0,
    padInside: 0,
    padArea: 0,
    contactConductance: 0,
    clearance: 0,
    barberShare: 1,
    bodyArea: 0,
  };
}

/**
 * Fills a grid with the figures of a brake.
 *
 * Equation: pad layers 2 k A / (d_i + d_(i+1)); pistons, body and fluid by `HeatPath`; ring to hat 1/G = ℓ/(k 2π R_i t) +
 * (b/2)/(k 2π R_m 2 t_cheek); hat = rotor less ring.
 * Assumes: both halves of a corner alike: the pad that lies on pistons stands for both; of a floating caliper the outer
 * pad, which lies on the fingers, is taken to be as warm. Plate and piston lose nothing to the air.
 * Valid: as `HeatPath` and `fillRotorGrid`.
 *
 * @param grid - the grid to fill
 * @param brake - rotor, pad, caliper, m, kg, J/(kg K), W/(m K); heat path, W/(m² K)
 * @throws OutOfRangeError where an input cannot be
 * Source: [geometry], [common-practice]
 */
export function fillCornerGrid(grid: CornerGrid, brake: AxleBrake): void {
  const path = brake.heatPath ?? usualHeatPath;
  requirePath(path);
  fillRotorGrid(grid.rotor, brake);
  placeNodes(grid);
  for (const each of [grid.heats, grid.heatSlopes, grid.faceAreas, grid.ventAreas]) each.fill(0);
  const { near, far, losses, sources } = grid.web;
  for (const each of [near, far, losses, sources]) each.fill(0);
  fillRotor(grid);
  fillHatAndHub(grid, brake, path);
  fillPad(grid, brake);
  fillBehindPad(grid, brake, path);
}

function requirePath(path: HeatPath): void {
  requireRange('conductance of the contact', path.contactConductance, 'W/(m² K)', 10, 1e7);
  requireRange('conductance from plate to piston', path.plateConductance, 'W/(m² K)', 0, 1e6);
  requireRange('conductance of the pistons', path.pistonConductance, 'W/(m² K)', 0.1, 1e6);
  requireRange('heat of the pistons', path.pistonHeat, 'J/(m² K)', 100, 1e7);
  requireRange('conductance from pistons to bore', path.boreConductance, 'W/(m² K)', 0, 1e6);
  requireRange('conductance from plate to body', path.bodyConductance, 'W/(m² K)', 0, 1e6);
  requireRange('specific heat of the body', path.bodySpecificHeat, 'J/(kg K)', 50, 5000);
  requireRange('conductance of the fluid', path.fluidConductance, 'W/(m² K)', 0, 1e5);
  requireRange('depth of the fluid', path.fluidDepth, 'm', 1e-4, 0.1);
  requireRange('wall of the hat', path.hatThickness, 'm', 5e-4, 0.05);
  requireRange('way along the hat', path.hatLength, 'm', 0.001, 0.5);
  requireRange('hub mass', path.hubMass, 'kg', 0.05, 100);
  requireRange('conductance of the hub joint', path.hubConductance, 'W/(m² K)', 0, 1e6);
}

function placeNodes(grid: CornerGrid): void {
  const { places, rotor } = grid;
  places.rotorLast = 2;
  places.rotorFace = 1 + rotor.nodes;
  places.padFace = places.rotorFace + 1;
  places.plate = places.padFace + grid.padLayers;
  places.piston = places.plate + 1;
  places.body = places.plate + 2;
  places.fluid = places.plate + 3;
  grid.nodes = places.plate + 4;
}

/** The rotor's own nodes stand face first; here they stand face last. */
function fillRotor({ rotor, web, places, heats, heatSlopes, ventAreas }: CornerGrid): void {
  for (let i = 0; i < rotor.nodes; i += 1) {
    const at = places.rotorFace - i;
    const mass = rotor.masses[i]! * rotor.area;
    heats[at] = mass * rotor.specificHeat;
    heatSlopes[at] = mass * rotor.specificHeatSlope;
    ventAreas[at] = rotor.ventShares[i]! * rotor.area;
    if (i + 1 < rotor.nodes) web.near[at - 1] = rotor.conductances[i]! * rotor.area;
  }
}

function fillHatAndHub(grid: CornerGrid, { rotor, pad }: AxleBrake, path: HeatPath): void {
  const { web, places, heats, heatSlopes, faceAreas } = grid;
  const hatMass = Math.max(leastMass.hat, 0.5 * (rotor.mass - rotor.ringMass));
  heats[places.hat] = hatMass * rotor.specificHeat;
  heatSlopes[places.hat] = hatMass * rotor.specificHeatSlope;
  faceAreas[places.hat] = hatMass / (rotor.density * path.hatThickness);
  heats[places.hub] = 0.5 * path.hubMass * steelHeat;
  faceAreas[places.hub] = 0.5 * hubArea;
  web.near[places.hub] = 0.5 * path.hubConductance * jointArea;
  const inner = rotor.sweptOuterRadius - pad.radialHeight;
  const middle = rotor.sweptOuterRadius - 0.5 * pad.radialHeight;
  const wall = path.hatLength / (inner * path.hatThickness);
  const ring = (0.5 * pad.radialHeight) / (middle * 2 * rotor.cheekThickness);
  const toHat = (0.5 * rotor.conductivity * 2 * Math.PI) / (wall + ring);
  const hasVanes = grid.rotor.nodes > grid.rotor.layers;
  if (hasVanes) web.far[places.hat] = toHat;
  else web.near[places.hat] = toHat;
}

function fillPad(grid: CornerGrid, { pad, rotor, heatPath, runningClearance }: AxleBrake): void {
  const { web, places, heats, padLayers } = grid;
  const area = requireRange('pad area', pad.area, 'm²', 1e-5, 0.1);
  const thickness = requireRange('pad thickness', pad.thickness, 'm', 5e-4, 0.05);
  const perLayer = requireRange('pad conductivity', pad.conductivity, 'W/(m K)', 0.01, 500) * area;
  const held = area * requireRange('pad density', pad.density, 'kg/m³', 200, 20_000) * pad.specificHeat;
  let layer = (thickness * (padStretch - 1)) / (Math.pow(padStretch, padLayers) - 1);
  grid.padInside = (2 * perLayer) / layer;
  for (let i = 0; i < padLayers; i += 1) {
    heats[places.padFace + i] = held * layer;
    const next = i + 1 < padLayers ? layer * padStretch : 0;
    web.near[places.padFace + i] = (2 * perLayer) / (layer + next);
    layer *= padStretch;
  }
  grid.rotorInside = grid.rotor.area / grid.rotor.faceResistance;
  grid.padArea = area;
  grid.contactConductance = (heatPath ?? usualHeatPath).contactConductance;
  grid.clearance = runningClearance;
  grid.barberShare = rotor.conductivity / (rotor.conductivity + pad.conductivity);
}

function fillBehindPad(grid: CornerGrid, { pad, caliper }: AxleBrake, path: HeatPath): void {
  const { web, places, heats } = grid;
  const pistonArea = caliper.pistonDiameters.reduce((sum, bore) => sum + (Math.PI / 4) * bore * bore, 0);
  const girth = caliper.pistonDiameters.reduce((sum, bore) => sum + Math.PI * bore, 0);
  const material = pad.area * pad.thickness * pad.density;
  heats[places.plate] = Math.max(leastMass.plate, pad.mass - material) * steelHeat;
  heats[places.piston] = path.pistonHeat * pistonArea;
  heats[places.body] = Math.max(leastMass.body, 0.5 * caliper.mass) * path.bodySpecificHeat;
  heats[places.fluid] = fluidHeat * pistonArea * path.fluidDepth;
  grid.bodyArea = 0.5 * bodyAreaAtOneKilogram * Math.pow(Math.max(0.2, caliper.mass), 2 / 3);
  const walls = pistonArea + girth * path.fluidDepth;
  web.near[places.plate] = inSeries(path.plateConductance, path.pistonConductance) * pistonArea;
  web.far[places.plate] = path.bodyConductance * pistonArea;
  web.near[places.piston] = path.boreConductance * pistonArea;
  web.far[places.piston] = inSeries(path.pistonConductance, path.fluidConductance) * pistonArea;
  web.near[places.body] = path.fluidConductance * walls;
}

function inSeries(one: number, other: number): number {
  return one > 0 && other > 0 ? 1 / (1 / one + 1 / other) : 0;
}
