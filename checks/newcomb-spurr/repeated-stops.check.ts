import { RotorState, exampleSetUp, repeatedStopsLumped, type RotorStep } from '@standstill/braking';
import { published } from '../published.ts';

const risePerStop = 60;
const coolingRate = 0.0025;
const interval = 45;

/** A thin ring that leads heat so well that it is one lump, cooling at the given rate. */
const halfThickness = 0.005;
/** m², as small as a pad can be: what it covers does not cool. */
const padArea = 1e-5;
const heatCapacity = halfThickness * 7200 * 460;

function lumpLikeRotor(): RotorState {
  const { frontBrake } = exampleSetUp;
  const pad = { ...frontBrake.pad, radialHeight: 0.05, area: padArea };
  const sweptOuterRadius = 0.147;
  const area = Math.PI * 0.05 * (2 * sweptOuterRadius - 0.05);
  const rotor = {
    ...frontBrake.rotor,
    kind: 'solid',
    outerDiameter: 0.3,
    sweptOuterRadius,
    thickness: 2 * halfThickness,
    cheekThickness: halfThickness,
    ringMass: 2 * halfThickness * area * 7200,
    density: 7200,
    specificHeat: 460,
    specificHeatSlope: 0,
    conductivity: 2500,
    emissivity: 0,
  } as const;
  const state = new RotorState(4);
  state.use({ rotor, pad });
  state.warmTo(20);
  return state;
}

/** Excess of the finite-volume ring right after the last of equal stops, each put in within a millisecond. */
function excessAfter(stops: number): number {
  const state = lumpLikeRotor();
  const still = { ventCoefficient: 0, airTemperature: 20 };
  const pulse = (heatCapacity * risePerStop) / 1e-3;
  const stop: RotorStep = {
    ...still,
    duration: 1e-3,
    fluxAtStart: pulse,
    fluxAtEnd: pulse,
    faceCoefficient: 0,
  };
  const uncovered = 1 - padArea / state.sweptArea;
  const faceCoefficient = (coolingRate * heatCapacity) / uncovered;
  const second: RotorStep = { ...still, duration: 1, fluxAtStart: 0, fluxAtEnd: 0, faceCoefficient };
  for (let number = 1; number <= stops; number += 1) {
    state.step(stop);
    if (number === stops) break;
    for (let i = 0; i < interval; i += 1) state.step(second);
  }
  return state.bulkTemperature() - 20;
}

const shared = { source: 'newcomb-spurr', basis: 'X', unit: 'K', tolerance: 0.05 } as const;
const inputs = '60 K each, cooling rate 0.0025 1/s, one every 45 s';

for (const [letter, stops, printed] of [
  ['a', 1, 60],
  ['b', 5, 242.6],
  ['c', 10, 380.8],
  ['d', 15, 459.6],
  ['e', Infinity, 563.9],
] as const)
  published(
    {
      ...shared,
      id: `4-08${letter}`,
      quantity: `rotor above the air right after ${stops === Infinity ? 'ever so many stops' : `stop ${stops}`}, ${inputs}`,
      printed,
    },
    () => repeatedStopsLumped({ risePerStop, coolingRate, interval, stops }),
  );

for (const [letter, stops, printed] of [
  ['f', 5, 242.6],
  ['g', 15, 459.6],
] as const)
  published(
    {
      ...shared,
      id: `4-08${letter}`,
      quantity: `the same after stop ${stops}, by our finite volumes on a thin ring`,
      printed,
    },
    () => excessAfter(stops),
  );
