import type { SignalSource } from '../signals/signal-source.ts';
import type { TrackPoint } from './track-point.ts';

/** A channel of a track and where a point holds its value. */
interface GpxSignal {
  readonly source: SignalSource;
  readonly of: (point: TrackPoint) => number;
}

function told(
  name: string,
  role: NonNullable<SignalSource['role']>,
  unit: string,
  unitOrigin: SignalSource['unitOrigin'] = 'format',
): SignalSource {
  return { name, guessFrom: [], unit, unitOrigin, role, isSwitch: false };
}

/**
 * What a GPX track may hold. GPX 1.0 states its speed in m/s; speeds in extensions are in m/s by convention, which the
 * file can't confirm.
 * Source: [gpx]
 */
export const gpxSignals: readonly GpxSignal[] = [
  { source: told('speed', 'speed', 'm/s'), of: (point) => point.speed },
  {
    source: told('speed (extension)', 'speed', 'm/s', 'assumed'),
    of: (point) => point.extendedSpeed,
  },
  { source: told('course', 'heading', '°'), of: (point) => point.course },
  { source: told('latitude', 'latitude', '°'), of: (point) => point.latitude },
  { source: told('longitude', 'longitude', '°'), of: (point) => point.longitude },
  { source: told('elevation', 'altitude', 'm'), of: (point) => point.elevation },
  { source: told('satellites', 'unknown', ''), of: (point) => point.satellites },
  { source: told('horizontal dilution', 'unknown', ''), of: (point) => point.dilution },
];
