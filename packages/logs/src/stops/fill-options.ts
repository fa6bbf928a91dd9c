import { requireRange } from '@standstill/numerics';
import type { FilledOptions, FindOptions, SensorNoise, TemperatureWindow } from './find-options.ts';

/**
 * Fills in what a person left out. Common practice: 25 km/h and 3 m/s² tell a brake test from parking and traffic;
 * what a workshop has at hand is not an instrument: receivers filter and send late, so that 0.05 s (2.5 times the delay
 * that SAE J299 allows an instrument) is assumed between brake signal and speed until the logger's own delay is known.
 *
 * @param options - what was said
 * @returns all options
 * @throws OutOfRangeError where a number can't be
 * Source: [sae-j299], [common-practice]
 */
export function fillOptions(options: FindOptions): FilledOptions {
  const { nominalSpeed = null, speedLatency = { value: 0, standardError: 0.05 } } = options;
  if (nominalSpeed !== null) requireRange('nominal speed', nominalSpeed, 'm/s', 1, 150);
  requireRange('speed latency', speedLatency.value, 's', -2, 2);
  requireRange('standard error of the speed latency', speedLatency.standardError, 's', 0, 2);
  return {
    sensorNoise: noiseOf(options.sensorNoise ?? {}),
    startTemperature: windowOf(options.startTemperature ?? null),
    nominalSpeed,
    speedLatency,
    minimumEntrySpeed: requireRange(
      'minimum entry speed',
      options.minimumEntrySpeed ?? 25 / 3.6,
      'm/s',
      1,
      150,
    ),
    minimumDeceleration: requireRange(
      'minimum deceleration',
      options.minimumDeceleration ?? 0.8,
      'm/s²',
      0,
      20,
    ),
    gentleBelow: requireRange('gentle deceleration', options.gentleBelow ?? 3, 'm/s²', 0, 20),
    grade: requireRange('grade', options.grade ?? 0, '', -0.3, 0.3),
    startBy: options.startBy ?? 'any',
    speedChannel: options.speedChannel ?? null,
    units: options.units ?? 'metric',
  };
}

function windowOf(window: TemperatureWindow | null): TemperatureWindow | null {
  if (window === null) return null;
  const low = requireRange('lowest start temperature', window.low, '°C', -80, 1500);
  return { low, high: requireRange('highest start temperature', window.high, '°C', low, 1500) };
}

function noiseOf(noise: SensorNoise): SensorNoise {
  if (noise.speed !== undefined) requireRange('noise of the speed', noise.speed, 'm/s', 1e-4, 10);
  if (noise.acceleration !== undefined)
    requireRange('noise of the accelerometer', noise.acceleration, 'm/s²', 1e-4, 50);
  if (noise.position !== undefined) requireRange('noise of the position', noise.position, 'm', 1e-3, 100);
  return noise;
}
