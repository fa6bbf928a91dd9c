import type { ColumnRole } from '../csv/guess-quantity.ts';

/** What a field of a known record holds. */
export interface RecordField {
  readonly name: string;
  readonly role: ColumnRole;
  readonly unit: string;
}

/**
 * Records of the open positioning-log format whose fields are known. The first field of each is a mask: its lowest bit
 * says that the first value behind it is valid, the next that the second is, and so on. Units as read from a log whose
 * speed, position and odometer tell of each other.
 * Source: [genivi-positioning]
 */
export const knownRecords: Readonly<Record<string, readonly RecordField[]>> = {
  GVVEHSP: [{ name: 'speed', role: 'speed', unit: 'km/h' }],
  GVODO: [{ name: 'distance', role: 'distance', unit: 'mm' }],
  GVGPSC: [
    { name: 'speed', role: 'speed', unit: 'm/s' },
    { name: 'course', role: 'heading', unit: '°' },
    { name: 'climb', role: 'unknown', unit: 'm/s' },
  ],
  GVGPSP: [
    { name: 'latitude', role: 'latitude', unit: '°' },
    { name: 'longitude', role: 'longitude', unit: '°' },
    { name: 'altitude', role: 'altitude', unit: 'm' },
  ],
};
