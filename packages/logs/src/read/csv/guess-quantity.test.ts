import { describe, expect, test } from 'vitest';
import { guessQuantity } from './guess-quantity.ts';

describe('guessQuantity', () => {
  test.each([
    ['Vehicle Speed Sensor', 'speed'],
    ['GPS speed', 'speed'],
    ['vehicleSpeed', 'speed'],
    ['v', 'speed'],
    ['Engine Speed', 'unknown'],
    ['speed_source', 'unknown'],
    ['speed accuracy', 'unknown'],
    ['Wheel Speed FL', 'wheel-speed'],
    ['wheelSpeedRR', 'wheel-speed'],
    ['Accelerator Pedal Position D', 'unknown'],
    ['Absolute Throttle Position', 'unknown'],
    ['accel_x', 'acceleration-forward'],
    ['Acceleration lateral', 'acceleration-lateral'],
    ['Brake Pressure Front', 'brake-pressure'],
    ['brake light', 'brake-switch'],
    ['Brake Pedal Force', 'pedal-force'],
    ['Brake Pedal Travel', 'pedal-travel'],
    ['Engine Coolant Temperature', 'temperature'],
    ['Brake disc temp FL', 'temperature'],
    ['gps_heading', 'heading'],
    ['Longitude', 'longitude'],
    ['Timestamp', 'time'],
    ['lap time', 'unknown'],
    ['Intake Manifold Absolute Pressure', 'unknown'],
  ])('%s is %s', (name, quantity) => expect(guessQuantity(name)).toBe(quantity));
});
