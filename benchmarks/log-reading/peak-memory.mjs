// Run as a process of its own: scans one file and prints its stops and the most memory that the process held, in MB.
import { scanLog } from '@standstill/logs';
import { fileSource } from './file-source.mjs';

const source = fileSource(process.argv[2]);
const from = performance.now();
const scan = scanLog(source, { name: 'made.csv', nominalSpeed: 26.8224 });
const seconds = (performance.now() - from) / 1000;
source.close();
if (!scan.ok) throw new Error(scan.sentence);
console.log(
  JSON.stringify({
    stops: scan.stops.length,
    rows: scan.source.rows,
    megabytesPerSecond: source.size / 1e6 / seconds,
    peak: process.resourceUsage().maxRSS / 1024,
  }),
);
