/** A job with nothing wrong, one fact a line, so that each can be made wrong. The car and its parts are invented. */
export const soundJobText = `standstill: 2
title: Invented sedan
car:
  name: Invented sedan
  class: sedan
  mass: 3300 lb
  wheelbase: 106 in
  centerOfGravityHeight: 21.5 in
  frontLoadShare: 56 %
  frontTrack: 61 in
conditions:
  surface: dry
  speed: 60 mph
  pedalForce: 90 lbf
  grade: 0 %
  startTemperature: 200 °F
  repeatedStops:
    count: 5
    interval: 45 s
parts:
  tire:
    kind: tire
    title: Road tire
    size: 205/55 R16
    peakFriction: 0.95
    peakSlip: 11 %
    slipStiffness: 22
    slideRatio: 0.78
  pedal:
    kind: pedal
    title: Pedal
    ratio: 4
    freePlay: 0.3 in
    availableTravel: 5.5 in
  booster:
    kind: booster
    title: Booster
    type: vacuum
    diaphragmDiameter: 9 in
    gain: 4.5
    jumpInForce: 45 lbf
    vacuum: 20 inHg
  master:
    kind: master-cylinder
    title: Master cylinder
    type: tandem
    bore: 7/8 in
  valve:
    kind: rear-valve
    title: Valve
    kneePressure: 400 psi
    slope: 0.3
  fluid:
    kind: fluid
    title: Fluid
    class: dot4
    dryBoilingPoint: 446 °F
    wetBoilingPoint: 311 °F
    volume: 0.2 L
    trappedAir: 0.5 cm³
  hose:
    kind: hose
    title: Hose
    length: 14 in
    expansion:
      - [1000 psi, 0.14 cm³/ft]
      - [1500 psi, 0.16 cm³/ft]
  front-caliper:
    kind: caliper
    title: Front caliper
    type: floating
    pistons: [54 mm]
  front-pad:
    kind: pad
    title: Front pad
    class: road
    area: 46 cm²
    radialHeight: 47 mm
    friction:
      - [68 °F, 0.38]
      - [400 °F, 0.40]
  front-rotor:
    kind: rotor
    title: Front rotor
    type: vented
    outerDiameter: 280 mm
    thickness: 24 mm
    cheekThickness: 7 mm
    sweptOuterDiameter: 278 mm
    mass: 7.5 kg
    ringMass: 5 kg
  rear-caliper:
    kind: caliper
    title: Rear caliper
    type: floating
    pistons: [34 mm]
  rear-pad:
    kind: pad
    title: Rear pad
    class: road
    area: 28 cm²
    radialHeight: 38 mm
  rear-rotor:
    kind: rotor
    title: Rear rotor
    type: solid
    outerDiameter: 250 mm
    thickness: 10 mm
    cheekThickness: 5 mm
setUps:
  as-found:
    title: As found
    frontTire: tire
    rearTire: tire
    pedal: pedal
    booster: booster
    masterCylinder: master
    rearValve: valve
    antilock: none
    fluid: fluid
    frontCaliper: front-caliper
    frontPad: front-pad
    frontRotor: front-rotor
    frontHose: hose
    rearCaliper: rear-caliper
    rearPad: rear-pad
    rearRotor: rear-rotor
    rearHose: hose
runs:
  - id: before
    setUp: as-found
    log: before.csv
    nominalSpeed: 60 mph
`;
