// How fast a CSV log becomes stops, against how fast the CSV library alone streams the same file into rows of text, and
// how much memory a file of a gigabyte takes.
import { execFileSync } from 'node:child_process';
import { createReadStream, mkdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { readLog, scanLog } from '@standstill/logs';
import papaparse from 'papaparse';
import { fileSource } from './log-reading/file-source.mjs';
import { rowsPerStop, writeLog } from './log-reading/write-log.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = join(root, 'node_modules/.cache/standstill/log-reading');
/** Rows of about 100 MB, of the same with every field in quotation marks, of a gigabyte, and of one hour. */
const rows = { plain: 1_260_000, quoted: 900_000, gigabyte: 12_600_000, hour: 360_000 };
const rounds = 3;
const options = { name: 'made.csv', nominalSpeed: 26.8224 };

export default async function logReading() {
  mkdirSync(folder, { recursive: true });
  try {
    return [...(await speeds()), hour(), ...memory()];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Library and reader take turns on the same file, so that what slows the machine slows both. */
async function speeds() {
  const found = [];
  for (const [quoting, count, words] of [
    ['none', rows.plain, '12 columns'],
    ['one', rows.plain, '12 columns, one heading in quotation marks'],
    ['all', rows.quoted, '12 columns, all fields in quotation marks'],
  ]) {
    const file = join(folder, `${quoting}.csv`);
    writeLog(file, count, quoting);
    const megabytes = statSync(file).size / 1e6;
    const measured = { library: [], stops: [], channels: [] };
    for (let round = 0; round < rounds; round += 1) {
      measured.library.push(megabytes / (await seconds(() => splitByLibrary(file, count))));
      measured.stops.push(megabytes / (await seconds(() => stopsOf(file, count))));
      const bytes = readFileSync(file);
      measured.channels.push(megabytes / (await seconds(() => channelsOf(bytes, count))));
    }
    rmSync(file);
    const reference = { name: 'papaparse streaming the same file', value: median(measured.library) };
    found.push(
      row(`papaparse alone, ${megabytes.toFixed(0)} MB, ${words}`, reference.value, 'MB/s'),
      row('  file to found stops, everything included', median(measured.stops), 'MB/s', reference),
      row('  bytes to channels', median(measured.channels), 'MB/s', reference),
    );
  }
  return found;
}

function hour() {
  const file = join(folder, 'hour.csv');
  writeLog(file, rows.hour);
  const bytes = readFileSync(file);
  const times = Array.from({ length: rounds }, () => {
    const from = performance.now();
    expectStops(scanLog(bytes, options), rows.hour);
    return performance.now() - from;
  });
  return row('one hour at 100 Hz with 12 columns, bytes to stops', median(times), 'ms');
}

function memory() {
  const file = join(folder, 'gigabyte.csv');
  writeLog(file, rows.gigabyte);
  const child = join(root, 'benchmarks/log-reading/peak-memory.mjs');
  const told = JSON.parse(execFileSync(process.execPath, [child, file], { encoding: 'utf8' }));
  const size = statSync(file).size / 1e9;
  rmSync(file);
  if (told.stops !== rows.gigabyte / rowsPerStop)
    throw new Error(`${told.stops} stops in the file of a gigabyte`);
  return [
    row(`most memory of a process that scans ${size.toFixed(2)} GB`, told.peak, 'MB'),
    row('  file to found stops, everything included', told.megabytesPerSecond, 'MB/s'),
  ];
}

function row(name, value, unit, reference) {
  if (reference === undefined) return { name, value, unit };
  return { name, value, unit, reference: reference.name, ratio: value / reference.value };
}

/** The library in the mode that understands the file: it looks at every piece for quotation marks by itself. */
function splitByLibrary(file, count) {
  return new Promise((resolve, reject) => {
    let split = 0;
    papaparse.parse(createReadStream(file, { highWaterMark: 1 << 20 }), {
      delimiter: ',',
      newline: '\n',
      chunk: ({ data }) => {
        split += data.length;
      },
      complete: () => (split > count ? resolve() : reject(new Error(`${split} rows instead of ${count}`))),
      error: reject,
    });
  });
}

function stopsOf(file, count) {
  const source = fileSource(file);
  expectStops(scanLog(source, options), count);
  source.close();
}

function channelsOf(bytes, count) {
  const read = readLog(bytes, options);
  if (!read.ok) throw new Error(read.sentence);
  if (read.table.time.length !== count) throw new Error(`${read.table.time.length} rows instead of ${count}`);
}

function expectStops(scan, count) {
  if (!scan.ok) throw new Error(scan.sentence);
  if (scan.source.rows !== count) throw new Error(`${scan.source.rows} rows instead of ${count}`);
  const expected = count / rowsPerStop;
  if (scan.stops.length !== expected) throw new Error(`${scan.stops.length} stops instead of ${expected}`);
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
