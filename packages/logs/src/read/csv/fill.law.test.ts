import { randomStream } from '@standstill/numerics';
import { expect, test } from 'vitest';
import { fillByLibrary } from './fill-by-library.ts';
import { fillFromBytes } from './fill-from-bytes.ts';
import { bytesOf, madeCsv } from './made-csv.testing.ts';
import { readCsv } from './read-csv.ts';

const shapes = [
  madeCsv(),
  madeCsv({ newline: '\r\n', header: ['Time [s]', 'Speed [km/h]', 'brake'] }),
  madeCsv({ newline: '\r' }),
  madeCsv({ delimiter: ';', decimal: ',' }),
  madeCsv({ delimiter: '\t', preamble: ['Öl', ''] }),
  madeCsv({ time: (seconds) => `12:00:${seconds.toFixed(3).padStart(6, '0')}` }),
];
const pieces = [
  '',
  'NA',
  '-0',
  '1e3',
  ' 7 ',
  '+.5',
  '1234567890123456',
  '0.1234567890123456',
  'on',
  '\u2212',
  'x',
  '\n',
  '\r\n',
  ',',
  ';',
  '\t',
  '  \n',
];

/** Puts odd pieces in odd places, but no quotation mark. */
function damaged(text: string, seed: number): Uint8Array {
  const random = randomStream(17, `${seed}`);
  let changed = text;
  for (let change = random.below(8); change > 0; change -= 1) {
    const at = random.below(changed.length + 1);
    changed =
      changed.slice(0, at) + pieces[random.below(pieces.length)]! + changed.slice(at + random.below(6));
  }
  return bytesOf(changed);
}

test('reading by bytes gives the same table, bit by bit, as reading by the library', () => {
  let read = 0;
  for (let seed = 0; seed < 600; seed += 1) {
    const bytes = damaged(shapes[seed % shapes.length]!, seed);
    const byBytes = readCsv(bytes, { name: 'made' }, fillFromBytes);
    expect(byBytes).toEqual(readCsv(bytes, { name: 'made' }, fillByLibrary));
    if (byBytes.ok) read += 1;
  }
  expect(read).toBeGreaterThan(300);
});
