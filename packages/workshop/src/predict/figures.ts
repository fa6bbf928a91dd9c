/** What is asked of every draw of a set-up; each is one column of numbers. */
export const figureNames = [
  'distance',
  'time',
  'meanDeceleration',
  'forceThere',
  'bottoms',
  'forceAtLimit',
  'limitReached',
  'travel',
  'travelShare',
  'frontPressure',
  'rearPressure',
  'heldForce',
  'heldTravel',
  'heldTravelShare',
  'heldFrontPressure',
  'heldRearPressure',
  'frontPeak',
  'rearPeak',
  'lastDistance',
  'rowStops',
  'lockDeceleration',
  'rearFirst',
  'rearFirstHot',
  'fluidPeak',
  'fluidBoils',
] as const;

export type FigureName = (typeof figureNames)[number];

/**
 * The answers of one set-up in one draw, SI (°C for temperatures; flags are 1 or 0): distance, m, and time, s, of one
 * stop; mean deceleration, m/s²; force that the pedal has travel for, N, and whether that is too little; pedal force at
 * which the first axle reaches its tires' limit, N (the strongest foot where that does not), and whether it is reached;
 * pedal travel, m, and its share at the asked force; line pressures, Pa, at the force there is; force, travel, its share
 * and pressures of a foot that stops at the tires' limit; hottest interfaces of one stop, °C; distance of the last
 * repeated stop, m, and whether the row came to rest; deceleration over g at the first lock, 1 (NaN where nothing
 * locks); whether the rear locks first, at the start and at the temperatures of the repeated stops; hottest fluid of the
 * repeated stops and of standing after them, °C, and whether that is above its boiling point at its age.
 */
export type Figures = Readonly<Record<FigureName, number>>;
