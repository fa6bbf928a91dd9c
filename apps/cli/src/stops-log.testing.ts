const step = 0.02;
const cruise = 27;

/** A log at 50 Hz: from 27 m/s one stop at each constant deceleration, m/s², with a run-up before each. */
export function stopsLog(decelerations: readonly number[]): string {
  const speeds: number[] = [];
  for (const deceleration of decelerations) {
    hold(speeds, cruise, 3);
    for (let speed = cruise; speed > 0; speed -= deceleration * step) speeds.push(speed);
    hold(speeds, 0, 3);
    for (let speed = 0; speed < cruise; speed += 3 * step) speeds.push(speed);
  }
  hold(speeds, cruise, 5);
  const rows = speeds.map((speed, index) => `${(index * step).toFixed(2)},${speed.toFixed(4)}`);
  return ['time [s],speed [m/s]', ...rows, ''].join('\n');
}

function hold(speeds: number[], speed: number, seconds: number): void {
  for (let i = 0; i < seconds / step; i += 1) speeds.push(speed);
}
