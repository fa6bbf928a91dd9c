// A full stop as plain numbers, in the order in which its twin in C reads them: what the march itself has worked out when
// it stands at the first touch, and the rotors cut into the same layers.
import {
  boosterAssist,
  coolingCoefficients,
  masterCylinderGains,
  rodForce,
  rotorHeatShare,
  usualAntilockControl,
} from '@standstill/braking';
import { emptyRotorGrid, fillRotorGrid } from '../../packages/braking/dist/heat/rotor-grid.js';

const layers = 6;
const coolingSpeedShare = 0.6;
const fastTime = 0.1;
const matchedRim = 3;
const alertShare = 0.7;

export function numbersOf(input, march) {
  const { setUp, road, foot, speed, rotorTemperatures } = input;
  march.start(input);
  const { body, wheels, lines } = march.dynamics;
  const four = (name) => wheels.each.map((wheel) => wheel[name]);
  const { antilock } = setUp;
  const control = usualAntilockControl;
  const assist = boosterAssist(setUp.booster);
  const gains = masterCylinderGains(setUp.masterCylinder);
  return [
    [speed, control.samplePeriod, body.mass, body.frontStill, body.rearStill, body.frontLift, body.rearLift],
    [body.drag, body.rolling, body.climb, body.transfer, body.pitchRate, body.pitchDamping],
    [body.pitchCarry, body.pitchLead],
    [...four('loadShare'), ...four('radius'), ...four('perInertia'), ...four('perRelaxation')],
    [
      ...four('gain'),
      ...four('pushOut'),
      ...four('engineDrag'),
      ...four('peakScale'),
      ...four('peakExponent'),
    ],
    [...wheels.frontCurve.nodes, ...wheels.rearCurve.nodes],
    [1 / lines.boosterQuickness, wheels.each[0].quickness, wheels.each[2].quickness],
    [1 / control.dumpTime],
    [gains.rear / gains.front, setUp.rearValve.kneePressure, setUp.rearValve.slope],
    [foot.force, foot.rampTime, rodForce({ pedal: setUp.pedal, force: 1 }), gains.front],
    [assist.start, assist.slope, assist.limit],
    [control.slipThreshold, control.rimDeceleration, control.slipFloor, control.fastShare, control.buildTime],
    [antilock.minimumSpeed, fastTime, matchedRim, alertShare, road.airTemperature],
    axleNumbers(input, setUp.frontBrake, setUp.frontTire, rotorTemperatures.front),
    axleNumbers(input, setUp.rearBrake, setUp.rearTire, rotorTemperatures.rear),
  ].flat();
}

function axleNumbers({ road, speed }, brake, { rollingRadius }, temperature) {
  const grid = emptyRotorGrid(layers);
  fillRotorGrid(grid, brake);
  const { nodes, masses, conductances, ventShares } = grid;
  const inUse = (array) => [...array].slice(0, nodes);
  const cooling = coolingCoefficients({
    rotor: brake.rotor,
    road,
    speed: coolingSpeedShare * speed,
    rollingRadius,
    temperature,
  });
  const { frictionTemperatures, frictions } = brake.pad;
  return [
    nodes,
    ...inUse(masses),
    ...inUse(conductances),
    ...inUse(ventShares),
    grid.faceResistance,
    grid.area,
    grid.specificHeat,
    grid.specificHeatSlope,
    grid.uncoveredEmissivity,
    grid.uncovered,
    rotorHeatShare(brake),
    cooling.face,
    cooling.vent,
    temperature,
    frictions.length,
    ...frictionTemperatures,
    ...frictions,
  ];
}
