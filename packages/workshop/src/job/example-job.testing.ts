/** An invented coupe with invented parts, for tests: as found, with a front kit, and with braided hoses only. */
export const exampleJobText = `standstill: 2
title: Invented coupe, front kit
complaint: The pedal goes long after three hard stops.
notice: Invented car and parts.

car:
  name: Invented two-seat coupe
  class: twoSeatCoupe
  mass: { value: 2650 lb, origin: measured, spread: 20 lb }
  wheelbase: 96 in
  centerOfGravityHeight: { value: 18.5 in, origin: assumed, spread: 1 in }
  frontLoadShare: { value: 53 %, origin: measured }

conditions:
  surface: dry
  speed: 60 mph
  pedalForce: 90 lbf
  pedalRamp: 0.3 s
  airTemperature: 70 °F
  startTemperature: 200 °F
  repeatedStops: { count: 8, interval: 40 s }

parts:
  tires: { kind: tire, title: Road tires, class: sportyRoad, size: 205/50 R16 }
  pedal: { kind: pedal, title: Pedal, ratio: 4.1 }
  booster: { kind: booster, title: Vacuum booster, type: vacuum, gain: 4.5, diaphragmDiameter: 9 in }
  master: { kind: master-cylinder, title: Master cylinder, bore: 7/8 in }
  valve: { kind: rear-valve, title: Proportioning valve, kneePressure: 430 psi, slope: 0.35 }
  abs: { kind: antilock, title: ABS, electronicRearLimit: false }
  fluid: { kind: fluid, title: Fluid as found, class: dot4 }
  stock-caliper: { kind: caliper, title: Stock front calipers, type: floating, pistons: [54 mm] }
  stock-pad: { kind: pad, title: Stock front pads, class: road, area: 42 cm², radialHeight: 45 mm }
  stock-rotor: { kind: rotor, title: Stock front rotors, type: vented, outerDiameter: 10.2 in, thickness: 20 mm }
  stock-hose: { kind: hose, title: Stock hoses, class: rubber, length: 14 in }
  kit-caliper: { kind: caliper, title: Four-piston calipers, type: fixed, pistons: [41 mm, 36 mm] }
  kit-pad:
    kind: pad
    title: Kit pads
    class: fastRoad
    area: { value: 52 cm², origin: specified }
    radialHeight: 46 mm
  kit-rotor: { kind: rotor, title: Kit rotors, type: vented, outerDiameter: 11.75 in, thickness: 25.4 mm }
  kit-hose: { kind: hose, title: Braided hoses, class: braided, length: 14 in }
  rear-caliper: { kind: caliper, title: Rear calipers, type: floating, pistons: [34 mm] }
  rear-pad: { kind: pad, title: Rear pads, class: road, area: 26 cm², radialHeight: 38 mm }
  rear-rotor: { kind: rotor, title: Rear rotors, type: solid, outerDiameter: 9.9 in, thickness: 10 mm }

setUps:
  as-found:
    title: As found
    frontTire: tires
    rearTire: tires
    pedal: pedal
    booster: booster
    masterCylinder: master
    circuitSplit: front-rear
    rearValve: valve
    antilock: abs
    fluid: fluid
    frontCaliper: stock-caliper
    frontPad: stock-pad
    frontRotor: stock-rotor
    frontHose: stock-hose
    rearCaliper: rear-caliper
    rearPad: rear-pad
    rearRotor: rear-rotor
    rearHose: stock-hose
  front-kit:
    title: Front kit
    basedOn: as-found
    frontCaliper: kit-caliper
    frontPad: kit-pad
    frontRotor: kit-rotor
    frontHose: kit-hose
  hoses-only:
    title: Braided hoses only
    basedOn: as-found
    frontHose: kit-hose
    rearHose: kit-hose

runs:
  - { id: before, setUp: as-found, log: before.csv, nominalSpeed: 60 mph, date: 2026-10-03 }
  - { id: after, setUp: front-kit, log: after.csv, nominalSpeed: 60 mph, date: 2026-10-31 }
`;
