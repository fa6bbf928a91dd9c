import { RotorState, exampleSetUp, slabConstantFlux, type RotorStep } from '@standstill/braking';
import { published } from '../published.ts';

const iron = { conductivity: 50, density: 7200, specificHeat: 460 };
const halfThickness = 0.012;
const flux = 1.5e6;
const duration = 3;
const slab = () => slabConstantFlux({ ...iron, thickness: halfThickness, flux, time: duration });

/** A solid rotor heated alike on both faces: each half is the slab, its middle the insulated back. */
function rotorLike(half: number): RotorState {
  const { frontBrake } = exampleSetUp;
  const pad = { ...frontBrake.pad, radialHeight: 0.05 };
  const sweptOuterRadius = 0.147;
  const area = Math.PI * 0.05 * (2 * sweptOuterRadius - 0.05);
  const rotor = {
    ...frontBrake.rotor,
    ...iron,
    kind: 'solid',
    outerDiameter: 0.3,
    sweptOuterRadius,
    thickness: 2 * half,
    cheekThickness: half,
    ringMass: 2 * half * area * iron.density,
    specificHeatSlope: 0,
    emissivity: 0,
  } as const;
  const state = new RotorState(400);
  state.use({ rotor, pad });
  state.warmTo(20);
  return state;
}

/** Marches the rotor over the stop under a flux that changes in a straight line; calls `look` after every step. */
function march(
  state: RotorState,
  [fluxAtStart, fluxAtEnd]: readonly [number, number],
  look: () => void = () => {},
): void {
  const steps = 3000;
  for (let i = 0; i < steps; i += 1) {
    const at = (index: number) => fluxAtStart + ((fluxAtEnd - fluxAtStart) * index) / steps;
    const step: RotorStep = {
      duration: duration / steps,
      fluxAtStart: at(i),
      fluxAtEnd: at(i + 1),
      faceCoefficient: 0,
      ventCoefficient: 0,
      airTemperature: 20,
    };
    state.step(step);
    look();
  }
}

function heated(): RotorState {
  const state = rotorLike(halfThickness);
  march(state, [flux, flux]);
  return state;
}

function greatestRiseWhileFalling(): number {
  const state = rotorLike(0.04);
  let greatest = 0;
  march(state, [3e6, 0], () => {
    greatest = Math.max(greatest, state.interfaceTemperature - 20);
  });
  return greatest;
}

const shared = { source: 'carslaw-jaeger', basis: 'X', unit: 'K', tolerance: 0.005 } as const;
const inputs = 'slab of 12 mm, 1.5 MW/m² on one face for 3 s, back insulated';

published(
  { ...shared, id: '4-15a', quantity: `${inputs}: rise of the face`, printed: 229.95 },
  () => slab().face,
);
published(
  { ...shared, id: '4-15b', quantity: `${inputs}: rise of the back`, printed: 56.5 },
  () => slab().back,
);
published({ ...shared, id: '4-15c', quantity: `${inputs}: mean rise`, printed: 113.22 }, () => slab().mean);

published(
  { ...shared, id: '4-15d', quantity: `${inputs}: rise of the face, by our finite volumes`, printed: 229.95 },
  () => heated().interfaceTemperature - 20,
);
published(
  { ...shared, id: '4-15e', quantity: `${inputs}: rise of the back, by our finite volumes`, printed: 56.5 },
  () => {
    const state = heated();
    return (state.temperatures[state.nodes - 1] ?? NaN) - 20;
  },
);
published(
  { ...shared, id: '4-15f', quantity: `${inputs}: mean rise, by our finite volumes`, printed: 113.22 },
  () => heated().bulkTemperature() - 20,
);
published(
  {
    ...shared,
    id: '4-13d',
    quantity: 'flux falling from 3 MW/m² to zero in 3 s, greatest rise of the face, by our finite volumes',
    printed: 214.78,
    note: 'On a half thickness of 40 mm, whose middle the heat does not reach in 3 s.',
  },
  greatestRiseWhileFalling,
);

published(
  {
    ...shared,
    id: '4-17',
    quantity: 'the same without dimensions, rise of the face at a Fourier number of 1',
    printed: 1.33332,
    unit: '',
    tolerance: 0.000005,
  },
  () => {
    const time = (halfThickness ** 2 * iron.density * iron.specificHeat) / iron.conductivity;
    const scale = (flux * halfThickness) / iron.conductivity;
    return slabConstantFlux({ ...iron, thickness: halfThickness, flux, time }).face / scale;
  },
);
