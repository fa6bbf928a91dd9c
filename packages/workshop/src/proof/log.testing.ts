/** An invented stop: from 30 m/s (or another speed) with a build-up of 0.3 s to a steady deceleration. */
export interface InventedStop {
  /** m/s. */
  readonly speed?: number;
  /** m/s². */
  readonly deceleration: number;
  /** °C of a rotor at the start; no such column where no stop has it. */
  readonly rotor?: number;
}

const rate = 50;

/**
 * A CSV log with invented stops, one after the other, each from steady driving to rest; a brake switch tells the start.
 *
 * @param stops - the stops in order
 * @returns the file's bytes
 */
export function logOf(stops: readonly InventedStop[]): Uint8Array {
  const rows: string[] = [];
  let time = 0;
  let temperature = '';
  const hasRotor = stops.some(({ rotor }) => rotor !== undefined);
  const row = (speed: number, brake: number): void => {
    rows.push(`${time.toFixed(3)},${(speed * 3.6).toFixed(4)},${brake}${temperature}`);
    time += 1 / rate;
  };
  for (const { speed = 30, deceleration, rotor } of stops) {
    if (hasRotor) temperature = `,${rotor ?? ''}`;
    for (let i = 0; i < 3 * rate; i += 1) row(speed, 0);
    let now = speed;
    for (let t = 0; now > 0; t += 1 / rate) {
      row(now, 1);
      now -= (deceleration * Math.min(1, (t + 0.5 / rate) / 0.3)) / rate;
    }
    for (let i = 0; i < 2 * rate; i += 1) row(0, 1);
    for (let i = 1; i < 6 * rate; i += 1) row((speed * i) / (6 * rate), 0);
  }
  return new TextEncoder().encode(
    `time (s),speed (km/h),brake switch${hasRotor ? ',front rotor temperature (°C)' : ''}\n${rows.join('\n')}\n`,
  );
}

/** m from first touch to rest of an invented stop, to a few centimeters. */
export function distanceOf({ speed = 30, deceleration }: InventedStop): number {
  // Over the ramp of 0.3 s the mean deceleration is half: Δv = a t/2, and the distance lost is v t − a t²/6.
  const after = speed - (deceleration * 0.3) / 2;
  return speed * 0.3 - (deceleration * 0.09) / 6 + after ** 2 / (2 * deceleration);
}
