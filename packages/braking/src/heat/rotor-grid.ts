import { requireRange } from '@standstill/numerics';
import { sweptArea, type RotorWithPad } from './swept-area.ts';

/** How many times thicker the innermost layer is than the one at the face. */
const stretch = 1.5;

/** m² of vane side per m² of swept face in one half of a vented rotor (assumed). */
const vaneSideShare = 0.4;

/** Share of the ring's mass, 1, under which vanes are counted with the cheeks. */
const leastVanes = 0.005;

/**
 * One half of a rotor, cut into layers from the rubbing face inwards; every figure is per m² of swept face. A vented
 * rotor has one node more than layers: its vanes. Heat is taken to reach both faces alike, so nothing crosses the middle.
 */
export interface RotorGrid {
  /** Layers of the cheek. */
  readonly layers: number;
  /** Share of the cheek's thickness in each layer; sums to 1. */
  readonly thicknessShares: Float64Array;
  /** kg/m² of each node. */
  readonly masses: Float64Array;
  /** W/(m² K) between node i and i + 1. */
  readonly conductances: Float64Array;
  /** m² of vent surface per m² of swept face, at each node. */
  readonly ventShares: Float64Array;
  /** m² K/W between the face and the middle of the first layer. */
  faceResistance: number;
  /** Nodes in use: layers, or layers + 1. */
  nodes: number;
  /** m², swept area of one face. */
  area: number;
  /** c_0, J/(kg K) at 20 °C. */
  specificHeat: number;
  /** c_1, J/(kg K²). */
  specificHeatSlope: number;
  /** ε, 1, of the part of the face that no pad covers, times that part's share. */
  uncoveredEmissivity: number;
  /** 1, share of the face that no pad covers. */
  uncovered: number;
}

/**
 * Answers an empty grid with room for `layers` layers and vanes, thin layers at the face.
 *
 * @param layers - number of layers, 1; 2 to 400
 * @returns the grid, to be filled by `fillRotorGrid`
 * @throws OutOfRangeError where the number cannot be
 * Source: [geometry]
 * @example
 * emptyRotorGrid(5).layers // => 5
 */
export function emptyRotorGrid(layers: number): RotorGrid {
  requireRange('layers of the rotor', layers, '', 2, 400);
  const thicknessShares = new Float64Array(layers);
  for (let i = 0; i < layers; i += 1) thicknessShares[i] = Math.pow(stretch, i / (layers - 1));
  const sum = thicknessShares.reduce((total, share) => total + share, 0);
  for (let i = 0; i < layers; i += 1) thicknessShares[i] = thicknessShares[i]! / sum;
  const masses = new Float64Array(layers + 1);
  const conductances = new Float64Array(layers + 1);
  const ventShares = new Float64Array(layers + 1);
  return {
    layers,
    thicknessShares,
    masses,
    conductances,
    ventShares,
    faceResistance: 0,
    nodes: layers,
    area: 0,
    specificHeat: 0,
    specificHeatSlope: 0,
    uncoveredEmissivity: 0,
    uncovered: 0,
  };
}

/**
 * Fills a grid with the figures of a rotor. Allocates nothing.
 *
 * Equation: layer mass = ρ d_i; conductance = 2 k / (d_i + d_(i+1)); vanes = ring mass / (2 A) less the cheek.
 * Assumes: the swept ring carries all of the heat (the hat is left out, so the ring is a little too hot). Where the
 * ring's stated mass differs from its geometry, a solid rotor's layers are scaled to it; in a vented one what the
 * cheeks leave over is the vanes, and where they leave nothing the cheeks are scaled.
 * Valid: half or cheek thickness 1 to 60 mm; ring mass 0.2 to 60 kg.
 *
 * @param grid - the grid to fill
 * @param parts - rotor (thickness, m; ring mass, kg; ρ, kg/m³; k, W/(m K)) and pad (radial height, m)
 * @throws OutOfRangeError where an input cannot be
 * Source: [geometry]
 */
export function fillRotorGrid(grid: RotorGrid, parts: RotorWithPad): void {
  const { rotor } = parts;
  const thickness = requireRange('cheek thickness', rotor.cheekThickness, 'm', 0.001, 0.06);
  grid.area = sweptArea(parts);
  const wholeMass = requireRange('ring mass', rotor.ringMass, 'kg', 0.2, 60) / (2 * grid.area);
  const cheekMass = requireRange('density', rotor.density, 'kg/m³', 500, 25_000) * thickness;
  const leftOver = wholeMass - cheekMass;
  const vaneMass = rotor.kind === 'vented' && leftOver > leastVanes * wholeMass ? leftOver : 0;
  requireRange('conductivity', rotor.conductivity, 'W/(m K)', 0.5, 2500);
  takeMaterial(grid, parts);
  fillLayers(grid, { thickness, mass: wholeMass - vaneMass, conductivity: rotor.conductivity });
  addVent(grid, { parts, vaneMass });
}

function takeMaterial(grid: RotorGrid, { rotor, pad }: RotorWithPad): void {
  grid.specificHeat = requireRange('specific heat', rotor.specificHeat, 'J/(kg K)', 50, 5000);
  grid.specificHeatSlope = requireRange(
    'rise of the specific heat',
    rotor.specificHeatSlope,
    'J/(kg K²)',
    0,
    5,
  );
  const covered = Math.min(1, requireRange('pad area', pad.area, 'm²', 1e-5, 0.1) / grid.area);
  grid.uncovered = rotor.kind === 'drum' ? 0 : 1 - covered; // a drum is closed: its inside does not cool
  grid.uncoveredEmissivity = grid.uncovered * requireRange('emissivity', rotor.emissivity, '', 0, 1);
}

interface Cheek {
  readonly thickness: number;
  readonly mass: number;
  readonly conductivity: number;
}

function fillLayers(grid: RotorGrid, cheek: Cheek): void {
  const { layers, thicknessShares } = grid;
  for (let i = 0; i < layers; i += 1) {
    grid.masses[i] = cheek.mass * thicknessShares[i]!;
    grid.ventShares[i] = 0;
    const next = i + 1 < layers ? thicknessShares[i + 1]! : 0;
    grid.conductances[i] = (2 * cheek.conductivity) / (cheek.thickness * (thicknessShares[i]! + next));
  }
  grid.conductances[layers - 1] = 0;
  grid.faceResistance = (0.5 * cheek.thickness * thicknessShares[0]!) / cheek.conductivity;
  grid.nodes = layers;
}

/** Vent face on the last layer; vanes as one node behind it, as thick as their mass says. */
function addVent(grid: RotorGrid, { parts, vaneMass }: { parts: RotorWithPad; vaneMass: number }): void {
  const { rotor } = parts;
  if (rotor.kind === 'solid') return;
  const last = grid.layers - 1;
  if (rotor.kind === 'drum') {
    grid.ventShares[last] = 1; // the outside of the wall
    return;
  }
  const halfGap = rotor.thickness / 2 - rotor.cheekThickness;
  requireRange('half of the vent gap', halfGap, 'm', 1e-4, 0.05);
  grid.ventShares[last] = 1 + vaneSideShare;
  if (vaneMass === 0) return;
  grid.ventShares[last] = 1;
  const vaneFootprint = Math.min(1, vaneMass / (rotor.density * halfGap));
  const intoCheek = (0.5 * rotor.cheekThickness * grid.thicknessShares[last]!) / rotor.conductivity;
  const alongVane = (0.5 * halfGap) / (rotor.conductivity * vaneFootprint);
  grid.conductances[last] = 1 / (intoCheek + alongVane);
  grid.conductances[last + 1] = 0;
  grid.masses[last + 1] = vaneMass;
  grid.ventShares[last + 1] = vaneSideShare;
  grid.nodes = grid.layers + 1;
}
