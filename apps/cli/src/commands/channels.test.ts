import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { logReport, readLogColumns } from '@standstill/workshop';
import { runHere } from '../command-here.testing.ts';
import { unbroken } from '../standstill.testing.ts';
import { stopsLog } from '../stops-log.testing.ts';

const folder = mkdtempSync(join(tmpdir(), 'standstill-channels-'));
const path = (name: string): string => join(folder, name);
const strange = path('strange.csv');
beforeAll(() => {
  const [, ...rows] = stopsLog([8]).trimEnd().split('\n');
  const more = rows.map((row, index) => `${row},${index % 7},${index > 200 ? 40 : 0}`);
  writeFileSync(strange, ['t,v raw,Gear,Brk P [bar]', ...more, 'torn', ''].join('\n'));
  writeFileSync(path('plain.csv'), stopsLog([8]));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const speed = ['--column', 'speed=v raw [m/s]', '--column', 'time=t [s]'];

const pressure = ['--column', 'brake-pressure=Brk P [bar]'];

describe('channels', () => {
  it('says of every column what it was taken for, by whom, its range, and what was skipped', async () => {
    const { code, out, err } = await runHere('channels', strange, ...speed, ...pressure, '--units', 'metric');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    const text = unbroken(out);
    expect(text).toMatch(/v raw speed you m\/s, by your word 0 km\/h to 97\.2 km\/h/);
    expect(text).toMatch(/Brk P \[bar\] brake-pressure you bar, by the heading 0 bar to 40 bar/);
    expect(text).toContain('Kept and not used: Gear (0 to 6).');
    expect(text).toMatch(/Skipped, mended or doubted: .*line \d+/);
  });

  it('takes a heading that ends in its unit as it is, and a unit behind another heading as a word on it', async () => {
    const plain = await runHere('channels', path('plain.csv'), '--column', 'speed=speed [m/s]', '--json');
    const other = await runHere('stops', strange, ...speed, '--json');
    for (const { out } of [plain, other]) {
      const [report] = JSON.parse(out) as readonly unknown[];
      const read = logReport.parse(report);
      expect(read.channels.find(({ quantity }) => quantity === 'speed')?.chosenBy).toBe('person');
      expect(read.stops[0]?.entrySpeed_m_s).toBeCloseTo(27, 1);
    }
  });

  it('remembers a word by the headings, for every command with logs', async () => {
    const file = path('columns.yaml');
    const saved = await runHere('channels', strange, ...speed, '--save', file);
    expect(saved.err).toContain('--columns');
    expect(readLogColumns(readFileSync(file, 'utf8'))).toMatchObject({
      ok: true,
      columns: [
        { headings: 't | v raw | Gear | Brk P [bar]', columns: { speed: { name: 'v raw', unit: 'm/s' } } },
      ],
    });
    expect((await runHere('stops', strange)).code).toBe(3);
    const found = await runHere('stops', strange, '--columns', file, '--speed', '60 mph');
    expect(found.code).toBe(0);
    expect(found.out).toContain('1 stop from 60 mph');
    const again = await runHere(
      'channels',
      path('plain.csv'),
      '--column',
      'speed=speed [m/s]',
      '--save',
      file,
    );
    expect(again).toMatchObject({ code: 5, err: expect.stringContaining('--force') as unknown });
    await runHere('channels', path('plain.csv'), '--column', 'speed=speed [m/s]', '--save', file, '--force');
    const reading = readLogColumns(readFileSync(file, 'utf8'));
    expect(reading.ok && reading.columns.map(({ headings }) => headings)).toEqual([
      't | v raw | Gear | Brk P [bar]',
      'time [s] | speed [m/s]',
    ]);
  });

  it('names the columns of a log that can not be used without a word on them', async () => {
    const { code, out, err } = await runHere('channels', strange);
    expect({ code, out }).toEqual({ code: 3, out: '' });
    expect(err).toContain('Its columns: "t", "v raw", "Gear", "Brk P [bar]".');
  });

  it.each([
    [['--column', 'sped=v raw'], 2, /"sped" is nothing that a column can be; accepted: time, speed,/],
    [['--column', 'v raw'], 2, /"v raw" is not role=heading; e\.g\./],
    [['--column', 'speed=v raw [m/s]', '--speed-column', 'v raw'], 2, /say the same thing/],
    [['--save', 'x.yaml'], 2, /--save needs --column/],
    [['--columns', 'gone.yaml'], 3, /gone\.yaml: there is no such file\./],
    [['--signals', 'gone.dbc'], 3, /gone\.dbc: there is no such file\./],
  ])('refuses %j in one line', async (words, code, line) => {
    const ended = await runHere('channels', strange, ...words);
    expect(ended).toMatchObject({ code, out: '' });
    expect(ended.err.trimEnd().split('\n')).toHaveLength(1);
    expect(ended.err).toMatch(line);
    expect(existsSync('x.yaml')).toBe(false);
  });
});
