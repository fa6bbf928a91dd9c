import { closeSync, openSync, writeSync } from 'node:fs';

export const headings = [
  'Time (s)',
  'Speed (km/h)',
  'Brake',
  'Brake Pressure (bar)',
  'Accel X (g)',
  'Accel Y (g)',
  'Latitude (deg)',
  'Longitude (deg)',
  'Altitude (m)',
  'Heading (deg)',
  'Temp FL [°C]',
  'Temp FR [°C]',
];
/** Rows from one stop to the next: a minute at 100 Hz. */
export const rowsPerStop = 6000;

/**
 * Writes a made log of 12 columns at 100 Hz with a stop a minute, and noise from a generator of its own, so that every
 * run has the same file. `quoting` puts 'none', 'one' (a heading) or 'all' fields in quotation marks.
 */
export function writeLog(file, rows, quoting = 'none') {
  const quoted = (text) => (quoting === 'all' ? `"${text}"` : text);
  const heading = headings.map((text) => (quoting === 'one' && text === 'Brake' ? '"Brake"' : quoted(text)));
  const minutes = madeMinutes();
  const descriptor = openSync(file, 'w');
  let lines = [heading.join(',')];
  for (let i = 0; i < rows; i += 1) {
    const minute = minutes[Math.floor(i / rowsPerStop) % minutes.length];
    const fields = minute[i % rowsPerStop];
    lines.push([(i / 100).toFixed(2), ...fields].map(quoted).join(','));
    if (lines.length < 20_000 && i + 1 < rows) continue;
    writeSync(descriptor, lines.join('\n') + '\n');
    lines = [];
  }
  closeSync(descriptor);
}

/** Ten minutes that differ in their noise, as fields without the time. */
function madeMinutes() {
  let state = 1;
  const noise = () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32 - 0.5;
  };
  return Array.from({ length: 10 }, () => {
    let speed = 0;
    let deceleration = 0;
    return Array.from({ length: rowsPerStop }, (_, row) => {
      const brakes = row > 3000 && row < 3400;
      deceleration = brakes ? Math.min(8.5, deceleration + 0.4) : 0;
      if (row < 2500) speed = Math.min(27.8, speed + 0.012);
      else speed = Math.max(0, speed - deceleration / 100);
      const felt = speed > 0 ? deceleration / 9.81 : 0;
      return [
        Math.max(0, speed * 3.6 + 0.1 * noise()).toFixed(2),
        brakes ? '1' : '0',
        (7 * deceleration + noise()).toFixed(2),
        (noise() * 0.02 - felt).toFixed(4),
        (noise() * 0.02).toFixed(4),
        (48 + row * 1e-6).toFixed(7),
        (11 + row * 1e-6).toFixed(7),
        (500 + noise()).toFixed(1),
        (90 + noise()).toFixed(2),
        (150 + noise()).toFixed(1),
        (150 + noise()).toFixed(1),
      ];
    });
  });
}
