import type { Dimension } from '@standstill/units';
import type { ColumnRole } from './guess-quantity.ts';

/** What kind of unit a column of each role carries; null where it carries none. */
export const roleDimension: Readonly<Record<ColumnRole, Dimension | null>> = {
  time: 'time',
  speed: 'speed',
  'wheel-speed': 'speed',
  'acceleration-forward': 'acceleration',
  'acceleration-lateral': 'acceleration',
  'acceleration-vertical': 'acceleration',
  latitude: 'angle',
  longitude: 'angle',
  heading: 'angle',
  altitude: 'length',
  distance: 'length',
  'pedal-travel': 'length',
  'brake-pressure': 'pressure',
  'pedal-force': 'force',
  temperature: 'temperature',
  'brake-switch': null,
  'fix-quality': null,
  unknown: null,
};
