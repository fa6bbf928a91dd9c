import type { ColumnRole } from '../csv/guess-quantity.ts';

/**
 * Signals of the open vehicle message format, with the units that it states. A log that merely uses the same names may
 * mean others, so that these units count as assumed.
 * Source: [openxc-messages]
 */
export const knownSignals: Readonly<Record<string, { readonly role: ColumnRole; readonly unit: string }>> = {
  vehicle_speed: { role: 'speed', unit: 'km/h' },
  odometer: { role: 'distance', unit: 'km' },
  latitude: { role: 'latitude', unit: '°' },
  longitude: { role: 'longitude', unit: '°' },
  brake_pedal_status: { role: 'brake-switch', unit: '' },
};
