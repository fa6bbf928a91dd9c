import { unitsOf, type Dimension } from '@standstill/units';
import type { LogColumnsDocument } from '@standstill/workshop';

/** What a column may be said to be. */
export type ColumnRole = keyof LogColumnsDocument['columns'];

interface RoleRow {
  readonly title: string;
  /** What its unit measures; null where it has none. */
  readonly dimension: Dimension | null;
  /** A car has several of these, and one does not replace the other. */
  readonly several?: true;
}

/** Every role in plain words, the ones that stops hang on first. */
export const columnRoles: Readonly<Record<ColumnRole, RoleRow>> = {
  time: { title: 'time', dimension: 'time' },
  speed: { title: 'speed of the car', dimension: 'speed' },
  'wheel-speed': { title: 'speed of a wheel', dimension: 'speed', several: true },
  'brake-switch': { title: 'brake switch', dimension: null },
  'brake-pressure': { title: 'brake line pressure', dimension: 'pressure', several: true },
  'pedal-force': { title: 'force on the pedal', dimension: 'force' },
  'pedal-travel': { title: 'travel of the pedal', dimension: 'length' },
  'acceleration-forward': { title: 'acceleration along the car', dimension: 'acceleration' },
  'acceleration-lateral': { title: 'acceleration across the car', dimension: 'acceleration' },
  'acceleration-vertical': { title: 'acceleration up and down', dimension: 'acceleration' },
  temperature: { title: 'temperature', dimension: 'temperature', several: true },
  latitude: { title: 'latitude', dimension: 'angle' },
  longitude: { title: 'longitude', dimension: 'angle' },
  altitude: { title: 'altitude', dimension: 'length' },
  heading: { title: 'direction of travel', dimension: 'angle' },
  distance: { title: 'distance driven', dimension: 'length' },
  'fix-quality': { title: 'quality of the satellite fix', dimension: null },
};

export const columnRoleIds = Object.keys(columnRoles) as readonly ColumnRole[];

/** What a channel was taken for, in words. */
export function roleWords(quantity: string): string {
  return isColumnRole(quantity) ? columnRoles[quantity].title : 'kept, not used';
}

export function isColumnRole(quantity: string): quantity is ColumnRole {
  return quantity in columnRoles;
}

/** Units that the numbers of such a column can be in; none where it has none. */
export function roleUnits(role: ColumnRole): readonly string[] {
  const { dimension } = columnRoles[role];
  return dimension === null ? [] : unitsOf(dimension);
}
