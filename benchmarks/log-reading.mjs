// How fast a CSV log becomes stops, against how fast the CSV library alone splits the same file into rows of text.
import { createReadStream, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { findStops, readLog } from '@standstill/logs';
import papaparse from 'papaparse';

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = join(root, 'node_modules/.cache/standstill/log-reading');
const rows = 600_000;
const rounds = 5;

export default async function logReading() {
  const file = writeLog();
  const megabytes = readFileSync(file).length / 1e6;
  const measured = { library: [], plain: [], quoted: [], read: [], find: [] };
  for (let round = 0; round < rounds; round += 1) {
    measured.library.push(megabytes / (await seconds(() => splitByLibrary(file))));
    const bytes = readFileSync(file);
    let table;
    const reading = await seconds(() => {
      table = tableOf(bytes);
    });
    const finding = await seconds(() => expectStops(findStops(table), rows / 6000));
    measured.read.push(megabytes / reading);
    measured.find.push(finding * 1000);
    measured.plain.push(megabytes / (reading + finding));
    measured.quoted.push(megabytes / (await seconds(() => findStops(tableOf(withQuote(bytes))))));
  }
  rmSync(folder, { recursive: true, force: true });
  const library = median(measured.library);
  const reference = 'papaparse streaming the same file';
  const speed = (name, values) => ({
    name,
    value: median(values),
    unit: 'MB/s',
    reference,
    ratio: median(values) / library,
  });
  return [
    speed(`papaparse alone, ${megabytes.toFixed(0)} MB of 12 columns`, measured.library),
    speed('CSV to found stops', measured.plain),
    speed('CSV to channels', measured.read),
    speed('CSV with a quotation mark to found stops (through papaparse)', measured.quoted),
    {
      name: `finding ${rows / 6000} stops in ${rows / 100 / 60} minutes at 100 Hz`,
      value: median(measured.find),
      unit: 'ms',
      reference: 'one pass of papaparse',
      ratio: median(measured.find) / ((1000 * megabytes) / library),
    },
  ];
}

/** A made log at 100 Hz: a stop a minute, with noise from a generator of its own so that every run has the same file. */
function writeLog() {
  mkdirSync(folder, { recursive: true });
  const file = join(folder, 'made.csv');
  let state = 1;
  const noise = () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32 - 0.5;
  };
  const lines = [
    'Time (s),Speed (km/h),Brake,Brake Pressure (bar),Accel X (g),Accel Y (g),Latitude (deg),Longitude (deg),Altitude (m),Heading (deg),Temp FL [°C],Temp FR [°C]',
  ];
  let speed = 0;
  for (let i = 0; i < rows; i += 1) {
    const phase = i % 6000;
    const brakes = phase > 3000 && phase < 3400;
    if (phase < 2500) speed = Math.min(27.8, speed + 0.012);
    else if (brakes) speed = Math.max(0, speed - 0.085);
    const fields = [
      (i / 100).toFixed(2),
      Math.max(0, speed * 3.6 + 0.1 * noise()).toFixed(2),
      brakes ? '1' : '0',
      ((brakes ? 60 : 0) + noise()).toFixed(2),
      (noise() * 0.02 - (brakes ? 0.87 : 0)).toFixed(4),
      (noise() * 0.02).toFixed(4),
      (48 + i * 1e-7).toFixed(7),
      (11 + i * 1e-7).toFixed(7),
      (500 + noise()).toFixed(1),
      (90 + noise()).toFixed(2),
      (150 + noise()).toFixed(1),
      (150 + noise()).toFixed(1),
    ];
    lines.push(fields.join(','));
  }
  writeFileSync(file, lines.join('\n') + '\n');
  return file;
}

function splitByLibrary(file) {
  return new Promise((resolve, reject) => {
    let count = 0;
    papaparse.parse(createReadStream(file, { highWaterMark: 1 << 20 }), {
      fastMode: true,
      delimiter: ',',
      newline: '\n',
      chunk: ({ data }) => {
        count += data.length;
      },
      complete: () => (count >= rows ? resolve() : reject(new Error(`${count} rows instead of ${rows}`))),
      error: reject,
    });
  });
}

function tableOf(bytes) {
  const read = readLog(bytes, { name: 'made.csv' });
  if (!read.ok) throw new Error(read.sentence);
  if (read.table.time.length !== rows) throw new Error(`${read.table.time.length} rows instead of ${rows}`);
  return read.table;
}

/** The same file with one heading in quotation marks, which sends it through the library. */
function withQuote(bytes) {
  const end = bytes.indexOf(10);
  const heading = Buffer.from(bytes.subarray(0, end)).toString().replace('Brake,', '"Brake",');
  return Buffer.concat([Buffer.from(heading), bytes.subarray(end)]);
}

function expectStops(stops, count) {
  if (stops.length !== count) throw new Error(`${stops.length} stops instead of ${count}`);
}

async function seconds(work) {
  const from = performance.now();
  await work();
  return (performance.now() - from) / 1000;
}

function median(values) {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
}

if (process.argv[1] === fileURLToPath(import.meta.url)) console.table(await logReading());
