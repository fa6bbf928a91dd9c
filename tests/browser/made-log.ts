/** A log of stops that nobody drove, with what is true of it. */
export interface MadeLog {
  readonly name: string;
  readonly text: string;
  /** ft, true distance of each stop from the first touch of the brake. */
  readonly distances: readonly number[];
}

export interface MadeLogWishes {
  readonly name: string;
  /** mph. */
  readonly speed: number;
  /** g of each stop, reached at once. */
  readonly decelerations: readonly number[];
}

const rate = 50;
const gravity = 32.174;
const feetPerSecond = 5280 / 3600;

/**
 * Stops of steady deceleration out of steady speed at 50 samples a second, with brake switch: so plain that the true
 * distance is v²/(2a), and every reader of logs must agree with it.
 */
export function madeLog({ name, speed, decelerations }: MadeLogWishes): MadeLog {
  const rows = ['time [s],speed [mph],brake switch'];
  let start = 0;
  for (const deceleration of decelerations) start = addStop(rows, { start, speed, deceleration });
  const v = speed * feetPerSecond;
  return {
    name,
    text: `${rows.join('\n')}\n`,
    distances: decelerations.map((g) => (v * v) / (2 * g * gravity)),
  };
}

function addStop(
  rows: string[],
  stop: { readonly start: number; readonly speed: number; readonly deceleration: number },
): number {
  const fall = (stop.deceleration * gravity) / feetPerSecond;
  const before = 4;
  const standing = 4;
  const away = 10;
  const length = before + stop.speed / fall + standing + away;
  for (let sample = 0; sample < length * rate; sample++) {
    const time = sample / rate;
    const braking = time >= before && time < length - away;
    const leaving = Math.min(stop.speed, Math.max(0, time - (length - away)) * (stop.speed / (away - 1)));
    const speed = braking
      ? Math.max(0, stop.speed - fall * (time - before))
      : time < before
        ? stop.speed
        : leaving;
    rows.push(`${(stop.start + time).toFixed(2)},${speed.toFixed(3)},${braking ? 1 : 0}`);
  }
  return stop.start + Math.ceil(length * rate) / rate;
}
