import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { noise } from '../noise.testing.ts';
import { realCommand, repository, tooWide, unbroken } from '../standstill.testing.ts';

const { folder, run } = realCommand();

function write(name: string, text: string): string {
  writeFileSync(join(folder(), name), text);
  return name;
}

/** The job that `new` writes, with one line changed. */
function broken(name: string, from: RegExp, to: string): string {
  run('new', 'sound-for-breaking.yaml');
  const text = readFileSync(join(folder(), 'sound-for-breaking.yaml'), 'utf8');
  expect(text).toMatch(from);
  return write(name, text.replace(from, to));
}

describe('new', () => {
  it('writes a job that check accepts', () => {
    const made = run('new', 'coupe.yaml', '--title', 'Long pedal: after two laps');
    expect(made).toMatchObject({ code: 0, err: '' });
    expect(made.out).toContain('coupe.yaml');
    expect(readFileSync(join(folder(), 'coupe.yaml'), 'utf8')).toContain('Long pedal: after two laps');
    const checked = run('check', 'coupe.yaml');
    expect(checked).toMatchObject({ code: 0, err: '' });
    expect(checked.out.split('\n')[0]).toBe('coupe.yaml is sound: Long pedal: after two laps.');
    expect(unbroken(checked.out)).toMatch(
      / \d+ values were assumed \(car \d+, .*\); --assumed lists them with their reasons\.$/,
    );
    expect(tooWide(checked.out)).toEqual([]);
    expect(checked.out).toMatch(
      /Measure these first.*\n {2}Peak friction on dry road: ~\S+ ± \S+, \d+ ft {2}parts\.tires\.peakFriction/,
    );
    expect(checked.out.trimEnd().split('\n').length).toBeLessThan(12);
    const whole = run('check', 'coupe.yaml', '--assumed').out;
    expect(whole).toMatch(/\d+ values were assumed:/);
    expect(whole.split('\n').length).toBeGreaterThan(80);
  });

  it('never writes over a file', () => {
    write('mine.yaml', 'my notes');
    const made = run('new', 'mine.yaml');
    expect(made).toMatchObject({ code: 5, out: '' });
    expect(made.err).toBe('mine.yaml: there is already such a file, and it stays as it is.\n');
    expect(readFileSync(join(folder(), 'mine.yaml'), 'utf8')).toBe('my notes');
  });

  it('says in one line that a folder is not there, and that a name is no job file', () => {
    expect(run('new', 'no/where.yaml')).toMatchObject({
      code: 5,
      out: '',
      err: 'no/where.yaml: the folder is not there.\n',
    });
    expect(run('new', 'car.txt')).toMatchObject({ code: 2, out: '' });
    expect(existsSync(join(folder(), 'car.txt'))).toBe(false);
  });

  it('tells programs what it wrote', () => {
    const made = run('new', 'for-programs.yaml', '--json');
    expect(JSON.parse(made.out)).toEqual({ kind: 'new-job', version: 1, file: 'for-programs.yaml' });
  });
});

describe('check', () => {
  it.each([
    ['a typo in a unit', /mass: \{ value: 3000 lb/, 'mass: { value: 3000 lbx', /^\S+:\d+:\d+: .*lbx/m],
    ['a missing wheelbase', /\n {2}wheelbase: .*/, '', /^\S+:\d+:\d+: .*wheelbase/m],
    [
      'a share of 200 %',
      /frontLoadShare: \{ value: 60 %/,
      'frontLoadShare: { value: 200 %',
      /^\S+:\d+:\d+: .*200/m,
    ],
    ['tabs for spaces', / {2}name: The car/, '\tname: The car', /^\S+:\d+:\d+: .*tab/m],
    [
      'a key that is not known',
      / {2}name: The car/,
      '  name: The car\n  colour: red',
      /^\S+:\d+:\d+: .*colour/m,
    ],
    ['a part that is not there', /frontPad: kit-pad/, 'frontPad: kit-pd', /^\S+:\d+:\d+: .*kit-pd/m],
  ])('finds %s, with its place, in one line', (_title, from, to, line) => {
    const checked = run('check', broken('broken.yaml', from, to));
    expect(checked).toMatchObject({ code: 1, err: '' });
    expect(checked.out).toMatch(line);
    expect(checked.out.trimEnd().split('\n')).toHaveLength(2);
    expect(checked.out).toMatch(/^broken\.yaml: one mistake\./);
  });

  it('tells all mistakes of all files, and every place is right', () => {
    const file = broken('two.yaml', /speed: 60 mph/, 'speed: 60 mhp');
    const text = readFileSync(join(folder(), file), 'utf8').replace('ratio: 4', 'ratio: many');
    write(file, text);
    const { code, out } = run('check', 'sound-for-breaking.yaml', file, '--json');
    expect(code).toBe(1);
    const result = JSON.parse(out) as {
      readonly files: readonly {
        readonly sound: boolean;
        readonly problems: readonly { line: number; found: string }[];
      }[];
    };
    expect(result.files.map(({ sound }) => sound)).toEqual([true, false]);
    const lines = text.split('\n');
    expect(result.files[1]?.problems).toHaveLength(2);
    for (const { line, found } of result.files[1]?.problems ?? [])
      expect(lines[line - 1]).toContain(found.replaceAll('"', ''));
  });

  it('says in one line that a file is not there, is a folder, or is noise', () => {
    expect(run('check', 'gone.yaml')).toMatchObject({
      code: 3,
      out: '',
      err: 'gone.yaml: there is no such file.\n',
    });
    expect(run('check', '.')).toMatchObject({ code: 3, out: '', err: '.: it is a folder.\n' });
    writeFileSync(join(folder(), 'noise.yaml'), noise(20_000));
    const checked = run('check', 'noise.yaml');
    expect(checked.code).toBe(1);
    expect(checked.out.trimEnd().split('\n')).toHaveLength(2);
  });

  it('finds the demo job sound', () => {
    expect(run('check', join(repository, 'examples/hill-climb-coupe')).code).toBe(0);
  });
});

describe('the command itself', () => {
  it('explains itself, with an example for every command', () => {
    const whole = run('--help');
    expect(whole).toMatchObject({ code: 0, err: '' });
    expect(whole.out).toContain('Exit codes:');
    for (const name of ['new', 'check', 'predict', 'stops', 'compare', 'serve', 'schema']) {
      expect(whole.out).toContain(`  ${name} `);
      const help = run(name, '--help');
      expect(help).toMatchObject({ code: 0, err: '' });
      expect(help.out).toContain(`Example:\n  standstill ${name}`);
    }
  });

  it.each([
    [['chekc', 'a.yaml'], 'check'],
    [['check'], 'missing required argument'],
    [['predict', 'a.yaml', '--unit', 'us'], '--units'],
    [['predict', 'a.yaml', '--units', 'imperial'], 'Allowed choices are us, metric'],
    [['predict', 'a.yaml', '--speed', '60'], '--speed: "60" has no unit'],
    [['predict', 'a.yaml', '--speed', '60 kg'], '--speed: "60 kg" is a mass'],
    [['predict', 'a.yaml', '--speed', '-60 mph'], '--speed: -60 mph; accepted is 2.24 mph to'],
    [['predict', 'a.yaml', '--draws', 'many'], '--draws: "many" is not a whole number'],
    [['compare', 'a.csv'], 'compare needs a log from before and one from after'],
    [['serve', '--port', '99999'], '--port: "99999" is not a whole number from 0 to 65535'],
    [['schema', 'nonsense'], 'No schema "nonsense"'],
  ])('refuses %j with exit code 2', (words, message) => {
    const ended = run(...words);
    expect(ended).toMatchObject({ code: 2, out: '' });
    expect(ended.err).toContain(message);
  });

  it('never colors what does not go to a terminal', () => {
    const { out } = run('check', 'coupe.yaml');
    expect(out).not.toContain('\u001B');
  });
});
