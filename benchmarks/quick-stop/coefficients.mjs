// The example stop as plain numbers for the plain march in JavaScript and for its twin in C: the same right-hand side as
// the quick stop (tires under load transfer, antilock, lag, pads at the face's temperature, three layers a rotor).
import {
  axleLoads,
  brakeTorque,
  linePressures,
  pressureLag,
  rotorHeatShare,
  standardGravity,
  sweptArea,
  tirePeakForce,
} from '@standstill/braking';

/** In the order in which both twins read them. */
export function coefficientsOf({ setUp, road, foot, speed }) {
  const { car, booster, pedal } = setUp;
  const held = linePressures({ setUp, pedalForce: foot.force });
  const still = axleLoads({ car, road, deceleration: 0, speed: 0 });
  const lag = pressureLag({ setUp, frontPressure: held.front, rearPressure: held.rear });
  const perForce = (force) => linePressures({ setUp, pedalForce: force }).front;
  const knee = kneeForce(booster, pedal);
  return [
    speed,
    car.mass,
    (car.mass * car.centerOfGravityHeight) / car.wheelbase,
    still.front,
    still.rear,
    0.5 * road.airDensity * car.frontLiftArea,
    0.5 * road.airDensity * car.rearLiftArea,
    0.5 * road.airDensity * car.dragArea,
    car.rollingResistance * car.mass * standardGravity,
    foot.rampTime,
    lag,
    perForce(1e-9),
    perForce(Math.min(knee, foot.force)),
    held.front,
    Math.min(1, knee / foot.force),
    setUp.rearValve.kneePressure,
    setUp.rearValve.slope,
    setUp.antilock.efficiency,
    setUp.antilock.minimumSpeed,
    ...axleCoefficients(setUp.frontBrake, setUp.frontTire, car.frontWheelInertia, road),
    ...axleCoefficients(setUp.rearBrake, setUp.rearTire, car.rearWheelInertia, road),
  ];
}

function kneeForce(booster, pedal) {
  const limit = booster.diaphragmArea * booster.vacuum * booster.efficiency;
  return (limit - booster.jumpInForce) / ((booster.gain - 1) * pedal.ratio * pedal.efficiency);
}

/** Gain, push-out, inertia, tire (scale, exponent, slide), heat (W to K/s of a layer, exchange), pad table of 5 points. */
function axleCoefficients(brake, tire, wheelInertia, road) {
  const { rotor, pad, caliper } = brake;
  const exponent = 1 - tire.loadSensitivity;
  const peak = tirePeakForce({ tire, load: tire.nominalLoad, surfaceFactor: road.surfaceFactor });
  const area = sweptArea(brake);
  const layer = rotor.cheekThickness / 3;
  const capacity = (rotor.ringMass / (2 * area) / 3) * rotor.specificHeat;
  return [
    (2 * brakeTorque({ brake, pressure: caliper.pushOutPressure + 1e6, friction: 1 })) /
      (1e6 * tire.rollingRadius),
    caliper.pushOutPressure,
    (2 * wheelInertia) / tire.rollingRadius ** 2,
    2 * peak * (2 * tire.nominalLoad) ** -exponent,
    exponent,
    tire.slideRatio,
    rotorHeatShare(brake) / (4 * area),
    1 / capacity,
    rotor.conductivity / layer,
    layer / (2 * rotor.conductivity),
    ...pad.frictionTemperatures,
    ...pad.frictions,
  ];
}
