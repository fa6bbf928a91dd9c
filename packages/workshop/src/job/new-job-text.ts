/**
 * A small job to start from, with a comment at everything worth changing: every fact in it is a placeholder.
 *
 * @param title - what the job is called
 * @returns YAML that `readJob` accepts
 */
export function newJobText(title: string): string {
  return `# A job: one car, its parts, the set-ups made of them, and the measured runs.
# Write units as you would on paper: "14 in", "355 mm", "53 %", "7/8 in".
# What you leave out is filled from stated classes and listed as assumed.
standstill: 2
title: ${JSON.stringify(title)}
complaint: What the owner says, in the owner's words.

car:
  name: The car
  # twoSeatCoupe, midEngine, compact, sedan, utility or anyCar: fills what you have not measured.
  class: sedan
  # With people and fuel as it will be driven. Weigh it if you can.
  mass: { value: 3000 lb, origin: assumed, spread: 150 lb }
  wheelbase: { value: 104 in, origin: assumed, spread: 2 in }
  frontLoadShare: { value: 60 %, origin: assumed, spread: 2 % } # four scales are worth the trip
  # centerOfGravityHeight: 21 in

conditions:
  surface: dry # dry, worn, damp or wet
  speed: 60 mph
  pedalForce: 90 lbf
  repeatedStops: { count: 10, interval: 45 s }

# Facts of parts. Everything below is a placeholder: put in what is on the car and what would go on.
parts:
  tires:
    kind: tire
    title: Tires as found
    class: road # road, sportyRoad or semiSlick
    size: 205/55 R16
  pedal: { kind: pedal, title: Pedal, ratio: 4 }
  booster: { kind: booster, title: Vacuum booster, type: vacuum, diaphragmDiameter: 8 in }
  master: { kind: master-cylinder, title: Master cylinder, bore: 7/8 in }
  valve: { kind: rear-valve, title: Rear proportioning valve, kneePressure: 400 psi, slope: 0.3 }
  # electronicRearLimit: true only where the unit also limits the rear brakes by itself (EBD).
  # abs: { kind: antilock, title: ABS, electronicRearLimit: true }
  # DOT 3, DOT 4 or DOT 5.1, as the cap says. Silicone (DOT 5) is not modeled and never mixed with these.
  # fluid: { kind: fluid, title: Fluid as found, class: DOT 4, age: 2 years } # old fluid boils early
  # hose: { kind: hose, title: Rubber hoses, class: rubber, length: 14 in } # rubber or braided
  front-caliper: { kind: caliper, title: Front calipers, type: floating, pistons: [54 mm] }
  front-pad: { kind: pad, title: Front pads, class: road, area: 46 cm², radialHeight: 47 mm }
  front-rotor: { kind: rotor, title: Front rotors, type: vented, outerDiameter: 280 mm, thickness: 24 mm }
  rear-caliper: { kind: caliper, title: Rear calipers, type: floating, pistons: [30 mm] }
  rear-pad: { kind: pad, title: Rear pads, class: road, area: 28 cm², radialHeight: 38 mm }
  rear-rotor: { kind: rotor, title: Rear rotors, type: solid, outerDiameter: 250 mm, thickness: 10 mm }
  kit-pad: { kind: pad, title: Fast-road front pads, class: fastRoad, area: 46 cm², radialHeight: 47 mm }

setUps:
  as-found:
    title: As found
    frontTire: tires
    rearTire: tires
    pedal: pedal
    booster: booster # or none
    masterCylinder: master
    rearValve: valve # or none
    antilock: none # or abs, once that part is above
    # fluid: fluid
    # frontHose: hose
    # rearHose: hose
    frontCaliper: front-caliper
    frontPad: front-pad
    frontRotor: front-rotor
    rearCaliper: rear-caliper
    rearPad: rear-pad
    rearRotor: rear-rotor
  pads-only:
    title: Front pads only
    basedOn: as-found # only what changes follows
    frontPad: kit-pad

# Measured stops, when there are any:
# runs:
#   - id: before
#     setUp: as-found
#     role: before # after, repeat (the old set-up once more), reference-before, reference-after, fade
#     log: before.csv
#     nominalSpeed: 60 mph
#     direction: out # or back
#     date: "2026-10-03"
#     tires: road tires, 30 psi warm
#     surface: dry asphalt
#     surfaceTemperature: 90 °F
#     startTemperature: 180 °F # of the rotors
`;
}
