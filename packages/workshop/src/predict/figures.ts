/** What is asked of every draw of a set-up; each is one column of numbers. */
export const figureNames = [
  'distance',
  'time',
  'meanDeceleration',
  'forceAtLimit',
  'travel',
  'travelShare',
  'frontPressure',
  'rearPressure',
  'frontPeak',
  'rearPeak',
  'lastDistance',
  'lockDeceleration',
  'rearFirst',
] as const;

export type FigureName = (typeof figureNames)[number];

/**
 * The answers of one set-up in one draw, SI (°C for temperatures): distance, m, and time, s, of one stop; mean
 * deceleration, m/s²; pedal force at which the first axle reaches its tires' limit, N (NaN where the strongest foot does
 * not); pedal travel, m, and its share; line pressures, Pa; hottest interfaces of one stop, °C; distance of the last
 * repeated stop, m; deceleration over g at the first lock, 1 (NaN where nothing locks); 1 where the rear locks first.
 */
export type Figures = Readonly<Record<FigureName, number>>;
