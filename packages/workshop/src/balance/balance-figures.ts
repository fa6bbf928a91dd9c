import { loadStates } from '../predict/load-state.ts';
import type { LoadState } from '../predict/load-state.ts';

/** What is asked of one state of load in one draw. */
export const stateFigureNames = [
  'mass',
  'frontLoadShare',
  'height',
  'first',
  'firstLock',
  'frontLock',
  'rearLock',
  'frontForceShare',
  'efficiency',
  'rearFirst',
  'rearFirstHot',
  'rearBelowFront',
  'adhesionWithin',
  'rearUnderTorqueWheel',
  'yawMoment',
  'pulledDeceleration',
  'gradeByBrake',
  'gradeByTires',
  'gradeHeld',
] as const;

export type StateFigureName = (typeof stateFigureNames)[number];

/**
 * The answers of one state in one draw, SI: mass, kg; front load share, 1; height of the center of gravity, m; axle that
 * locks first (1 front, 2 rear, 3 both, 0 none) and decelerations over g at the first lock and at that of each axle by
 * itself (NaN where the foot can't lock it); front force share and braking efficiency there, 1; flags (1 or 0): rear first
 * on some road with pads warm or cold, and with pads as hot as the repeated stops make them (NaN where they are not driven);
 * the rules of Annex 5 and the torque-wheel line; yaw moment, N m, and deceleration left, over g, with one front brake dead;
 * steepest grades, 1, that the parking brake and the tires hold (NaN where no parking brake is known).
 */
export type StateFigures = Readonly<Record<StateFigureName, number>>;

/** Decelerations over g of the curves. */
export const curveDecelerations: readonly number[] = Array.from(
  { length: 48 },
  (_, index) => (index + 1) / 40,
);

const curves = ['frontAdhesion', 'rearAdhesion'] as const;
const perState = stateFigureNames.length + curves.length * curveDecelerations.length;

/** Place of a figure in the answer to one draw: figure 0 says that there is an answer at all. */
export function placeOf(state: LoadState, figure: StateFigureName): number {
  return 1 + loadStates.indexOf(state) * perState + stateFigureNames.indexOf(figure);
}

/** Place of the first point of a curve. */
export function curvePlaceOf(state: LoadState, curve: (typeof curves)[number]): number {
  const before = stateFigureNames.length + curves.indexOf(curve) * curveDecelerations.length;
  return 1 + loadStates.indexOf(state) * perState + before;
}

/** Names of all figures of a draw, in the order of the answer. */
export const balanceFigures: readonly string[] = [
  'answered',
  ...loadStates.flatMap((state) => [
    ...stateFigureNames.map((name) => `${state} ${name}`),
    ...curves.flatMap((curve) => curveDecelerations.map((z) => `${state} ${curve} at ${z}`)),
  ]),
];
