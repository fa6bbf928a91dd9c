import type { Known } from '../job/known.ts';

/** Picks one possible value of a known number: its central value, or one of many draws. */
export type Draw = (known: Known) => number;

/** The value itself, as if it were known exactly. */
export const central: Draw = (known) => known.value;
