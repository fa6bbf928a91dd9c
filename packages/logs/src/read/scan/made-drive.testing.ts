import { randomStream } from '@standstill/numerics';

/** How a made drive of many stops is to be. */
export interface DriveShape {
  readonly seed: number;
  /** s. */
  readonly length: number;
  /** Hz. */
  readonly rate: number;
  /** m/s, standard deviation of the noise on the speed. */
  readonly noise?: number;
  /** How the first column is written, from s; plain seconds where absent. */
  readonly clock?: (seconds: number) => string;
}

/** CSV of a made drive: a stop from about 100 km/h every 40 s to 80 s, some of them gentle, with a brake pressure. */
export function madeDriveCsv({ seed, length, rate, noise = 0, clock }: DriveShape): string {
  const random = randomStream(seed, 'drive');
  const jitter = randomStream(seed, 'noise');
  const lines = ['Time (s),Speed (km/h),Brake Pressure (bar),Oil (°C)'];
  let [speed, target, braking, until] = [0, 28, 0, 20 + 20 * random.uniform()];
  for (let i = 0; i < length * rate; i += 1) {
    const time = i / rate;
    if (time >= until) {
      braking = braking > 0 ? 0 : random.uniform() < 0.2 ? 1.5 : 7 + 2 * random.uniform();
      until = time + (braking > 0 ? target / braking + 4 : 30 + 30 * random.uniform());
      if (braking === 0) target = 26 + 3 * random.uniform();
    }
    speed = braking > 0 ? Math.max(0, speed - braking / rate) : Math.min(target, speed + 3 / rate);
    const shown = Math.max(0, 3.6 * (speed + noise * jitter.normal()));
    lines.push(
      [
        clock === undefined ? time.toFixed(4) : clock(time),
        shown.toFixed(3),
        (braking > 0 ? 8 * braking : 0).toFixed(1),
        (80 + (i % 7)).toFixed(0),
      ].join(','),
    );
  }
  return `${lines.join('\n')}\n`;
}
