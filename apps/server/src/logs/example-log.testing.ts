/**
 * Writes a log as a 20 Hz receiver would: a car at 30 m/s that brakes at a steady rate to rest.
 *
 * @param deceleration - m/s²
 * @returns the bytes of a CSV file
 */
export function exampleLog(deceleration = 8): Uint8Array<ArrayBuffer> {
  const rows = ['time (s),speed (m/s)'];
  for (let step = 0; step < 240; step += 1) {
    const time = step / 20;
    const speed = Math.max(0, 30 - deceleration * Math.max(0, time - 3));
    rows.push(`${time.toFixed(2)},${speed.toFixed(3)}`);
  }
  return new TextEncoder().encode(`${rows.join('\n')}\n`);
}
