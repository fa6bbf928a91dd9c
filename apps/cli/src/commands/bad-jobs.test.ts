import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { commandsTaking, runHere } from '../command-here.testing.ts';
import { soundJobText } from '../sound-job.testing.ts';
import { repository } from '../standstill.testing.ts';

const folder = mkdtempSync(join(tmpdir(), 'standstill-bad-jobs-'));
const file = join(folder, 'job.yaml');
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Where the mistake is: this mark stands before it in the table and not in the file. */
const mark = '▸';

/** What is changed, into what (with the mark), and the line after the place; `~` where it only begins so. */
type BadJob = readonly [name: string, from: string, to: string, message: string];

const badJobs: readonly BadJob[] = [
  ['a 3 kg car', 'mass: 3300 lb', 'mass: ▸3 kg', 'car.mass is 3 kg; accepted is 150 kg to 8000 kg'],
  [
    'a car below zero',
    'mass: 3300 lb',
    'mass: ▸-3300 lb',
    'car.mass is -3300 lb; accepted is 331 lb to 17600 lb',
  ],
  [
    'a mass without a unit',
    'mass: 3300 lb',
    'mass: ▸3300',
    'car.mass can\'t be read: "3300" has no unit; a mass is wanted, e.g. "2900 lb" or "1315 kg"',
  ],
  [
    'a mass in feet',
    'mass: 3300 lb',
    'mass: ▸3300 ft',
    'car.mass can\'t be read: "3300 ft" is a length; a mass is wanted, e.g. "2900 lb" or "1315 kg"',
  ],
  [
    'a mass that is no number',
    'mass: 3300 lb',
    'mass: ▸NaN kg',
    'car.mass can\'t be read: "NaN kg" does not start with a number that can be read; a mass is wanted, e.g. "2900 lb" or "1315 kg"',
  ],
  [
    'a mass that YAML takes for no number',
    'mass: 3300 lb',
    'mass: ▸.nan',
    'car.mass is NaN; accepted is the test mass, such as 2650 lb',
  ],
  [
    'a mass without end',
    'mass: 3300 lb',
    'mass: ▸1e999 kg',
    'car.mass can\'t be read: "1e999 kg" is not a finite number; a mass is wanted, e.g. "2900 lb" or "1315 kg"',
  ],
  [
    'a number that can be read in two ways',
    'mass: 3300 lb',
    'mass: ▸1,5,0 kg',
    'car.mass can\'t be read: "1,5,0 kg": the number can be read in two ways; write it without thousands marks. A mass is wanted, e.g. "2900 lb" or "1315 kg"',
  ],
  [
    'a list for a quantity',
    'mass: 3300 lb',
    'mass: ▸[1, 2]',
    'car.mass is a list of 2; accepted is the test mass, such as 2650 lb',
  ],
  [
    'an unknown origin',
    'mass: 3300 lb',
    'mass: { value: 3300 lb, origin: ▸guessed }',
    'car.mass.origin is "guessed"; accepted: measured, specified, assumed',
  ],
  [
    'an unknown field of a quantity',
    'mass: 3300 lb',
    'mass: { value: 3300 lb, ▸sigma: 2 lb }',
    'car.mass.sigma: "sigma" is not a key known in car.mass; known here: value, unit, origin, spread, note',
  ],
  [
    'a spread below zero',
    'mass: 3300 lb',
    'mass: ▸{ value: 3300 lb, spread: -2 lb }',
    'car.mass has the spread "-2 lb"; accepted is a spread such as "2 %", or an amount with a unit, not below zero and within what the value can be',
  ],
  [
    'a spread larger than any car',
    'mass: 3300 lb',
    'mass: ▸{ value: 3300 lb, spread: 9000 kg }',
    'car.mass has the spread "9000 kg"; accepted is a spread such as "2 %", or an amount with a unit, not below zero and within what the value can be',
  ],
  [
    'no wheelbase',
    'car:\n  name: Invented sedan\n  class: sedan\n  mass: 3300 lb\n  wheelbase: 106 in\n',
    '▸car:\n  name: Invented sedan\n  class: sedan\n  mass: 3300 lb\n',
    'car.wheelbase is missing; give the wheelbase, such as 96 in',
  ],
  [
    'a wheelbase in the wrong unit of length',
    'wheelbase: 106 in',
    'wheelbase: ▸106 mm',
    'car.wheelbase is 106 mm; accepted is 1000 mm to 6000 mm',
  ],
  [
    'a key typed wrong',
    'wheelbase: 106 in',
    '▸wheelBase: 106 in',
    'car.wheelBase: "wheelBase" is not a key known in car; did you mean "wheelbase"?',
  ],
  [
    'an unknown field of a part',
    'length: 14 in',
    'length: 14 in\n    ▸maker: someone',
    'parts.hose.maker: "maker" is not a key known in parts.hose; known here: kind, title, class, note, expansion, length',
  ],
  [
    'a share over 100 %',
    'frontLoadShare: 56 %',
    'frontLoadShare: ▸120 %',
    'car.frontLoadShare is 120 %; accepted is 20 % to 80 %',
  ],
  [
    'a share whose % was forgotten',
    'frontLoadShare: 56 %',
    'frontLoadShare: ▸56',
    'car.frontLoadShare is 56; accepted is 0.2 to 0.8',
  ],
  [
    'a center of gravity as high as the car is long',
    'wheelbase: 106 in\n  centerOfGravityHeight: 21.5 in',
    'wheelbase: 96 in\n  centerOfGravityHeight: ▸60 in',
    'car.centerOfGravityHeight is 60 in (1520 mm), more than 60 % of the wheelbase of 96 in (2440 mm); accepted is at most 57.6 in (1460 mm)',
  ],
  [
    'a track wider than the wheelbase',
    'wheelbase: 106 in\n  centerOfGravityHeight: 21.5 in\n  frontLoadShare: 56 %\n  frontTrack: 61 in',
    'wheelbase: 60 in\n  centerOfGravityHeight: 21.5 in\n  frontLoadShare: 56 %\n  frontTrack: ▸61 in',
    'car.frontTrack is 61 in (1550 mm), wider than the wheelbase of 60 in (1520 mm) is long; accepted is at most 60 in (1520 mm)',
  ],
  [
    'an unknown class',
    'class: sedan',
    'class: ▸seden',
    'car.class is "seden"; did you mean "sedan"? Accepted: twoSeatCoupe, midEngine, compact, sedan, utility, anyCar',
  ],
  [
    'a speed without a unit',
    'speed: 60 mph\n  pedal',
    'speed: ▸60\n  pedal',
    'conditions.speed can\'t be read: "60" has no unit; a speed is wanted, e.g. "60 mph" or "100 km/h"',
  ],
  [
    'a speed in kilograms',
    'speed: 60 mph\n  pedal',
    'speed: ▸60 kg\n  pedal',
    'conditions.speed can\'t be read: "60 kg" is a mass; a speed is wanted, e.g. "60 mph" or "100 km/h"',
  ],
  [
    'a speed that no car has',
    'speed: 60 mph\n  pedal',
    'speed: ▸900 mph\n  pedal',
    'conditions.speed is 900 mph; accepted is 2.24 mph to 268 mph',
  ],
  [
    'a pedal that is pulled',
    'pedalForce: 90 lbf',
    'pedalForce: ▸-90 lbf',
    'conditions.pedalForce is -90 lbf; accepted is 2.25 lbf to 449 lbf',
  ],
  [
    'a pedal force in psi',
    'pedalForce: 90 lbf',
    'pedalForce: ▸90 psi',
    'conditions.pedalForce can\'t be read: "90 psi" is a pressure; a force is wanted, e.g. "100 lbf" or "450 N"',
  ],
  [
    'a grade like a wall',
    'grade: 0 %',
    'grade: ▸60 %',
    'conditions.grade is 60 %; accepted is -30 % to 30 %',
  ],
  [
    'half a stop',
    'count: 5',
    'count: ▸5.5',
    'conditions.repeatedStops.count is 5.5; accepted is a whole number',
  ],
  [
    'five hundred stops',
    'count: 5',
    'count: ▸500',
    'conditions.repeatedStops.count is 500; accepted is at most 60',
  ],
  [
    'an interval in mph',
    'interval: 45 s',
    'interval: ▸45 mph',
    'conditions.repeatedStops.interval can\'t be read: "45 mph" is a speed; a time is wanted, e.g. "0.3 s" or "300 ms"',
  ],
  [
    'a tire size that is none',
    'size: 205/55 R16',
    'size: ▸wide',
    'parts.tire.size is "wide"; accepted is a size as on the sidewall, such as 205/50 R16',
  ],
  [
    'a radius that the size denies',
    'size: 205/55 R16',
    'size: 205/55 R16\n    rollingRadius: ▸20 in',
    'parts.tire.rollingRadius is 20 in (508 mm), which a tire of the size 205/55 R16 does not have; accepted is 11.6 in (294 mm) to 12.4 in (315 mm)',
  ],
  [
    'a slide that no curve has',
    'slideRatio: 0.78',
    'slideRatio: ▸0.3',
    'parts.tire.slideRatio is 0.3, which no slip curve with its peak at 11 % and a stiffness of 22 has; accepted is 0.383 to 0.999',
  ],
  [
    'a slip curve too soft for its peak',
    'slipStiffness: 22',
    'slipStiffness: ▸5',
    'parts.tire.slipStiffness is 5, which no slip curve with its peak at 11 % has; accepted is 9.1 to 181',
  ],
  [
    'a tire with the grip of glue',
    'peakFriction: 0.95',
    'peakFriction: ▸9.5',
    'parts.tire.peakFriction is 9.5; accepted is 0.1 to 3',
  ],
  ['a pedal ratio of 40', 'ratio: 4\n', 'ratio: ▸40\n', 'parts.pedal.ratio is 40; accepted is 1 to 12'],
  [
    'free play that is all of the travel',
    'freePlay: 0.3 in\n    availableTravel: 5.5 in',
    'freePlay: ▸3 in\n    availableTravel: 2.5 in',
    "parts.pedal.freePlay is 3 in (76.2 mm), all of the pedal's travel of 2.5 in (63.5 mm); accepted is less than 2.5 in (63.5 mm)",
  ],
  [
    'a knee below the jump-in',
    'diaphragmDiameter: 9 in\n    gain: 4.5\n    jumpInForce: 45 lbf',
    'diaphragmDiameter: 4 in\n    gain: 4.5\n    jumpInForce: ▸200 lbf',
    '~parts.booster.jumpInForce is 200 lbf (890 N), more than the diaphragm can give at its vacuum, 1',
  ],
  [
    'a booster that is none',
    'type: vacuum',
    'type: ▸vaccum',
    'parts.booster.type is "vaccum"; did you mean "vacuum"? Accepted: vacuum, hydraulic',
  ],
  [
    'more vacuum than there is air',
    'vacuum: 20 inHg',
    'vacuum: ▸40 inHg',
    'parts.booster.vacuum is 40 inHg; accepted is 2.96 inHg to 29.5 inHg',
  ],
  [
    'a bore without a unit',
    'bore: 7/8 in',
    'bore: ▸7/8',
    'parts.master.bore can\'t be read: "7/8" has no unit; a length is wanted, e.g. "14 in" or "355 mm"',
  ],
  [
    'an 8 in master cylinder',
    'bore: 7/8 in',
    'bore: ▸8 in',
    'parts.master.bore is 8 in; accepted is 0.394 in to 1.96 in',
  ],
  [
    'a bore that means nothing there',
    'bore: 7/8 in',
    'bore: 7/8 in\n    ▸frontBore: 3/4 in',
    'parts.master.frontBore has no meaning on a tandem cylinder; take it out, or change the type',
  ],
  [
    'a valve that raises the pressure',
    'slope: 0.3',
    'slope: ▸1.3',
    'parts.valve.slope is 1.3; accepted is 0 to 1',
  ],
  [
    'silicone fluid',
    'class: dot4',
    'class: ▸DOT 5',
    '~parts.fluid.class is "DOT 5": silicone fluid (DOT 5) is not modeled; it must never be mixed',
  ],
  [
    'wet boiling over dry',
    'wetBoilingPoint: 311 °F',
    'wetBoilingPoint: ▸500 °F',
    'parts.fluid.wetBoilingPoint is 500 °F (260 °C), not below the dry boiling point of 446 °F (230 °C); accepted is less than 446 °F (230 °C)',
  ],
  [
    'a boiling point in an unknown unit',
    'wetBoilingPoint: 311 °F',
    'wetBoilingPoint: ▸311 K/W',
    'parts.fluid.wetBoilingPoint can\'t be read: "311 K/W": unknown unit "K/W"; a temperature is wanted, e.g. "660 °F" or "350 °C"',
  ],
  [
    'more air than fluid',
    'volume: 0.2 L\n    trappedAir: 0.5 cm³',
    'volume: 0.1 L\n    trappedAir: ▸150 cm³',
    'parts.fluid.trappedAir is 150 cm³, as much as the fluid itself, 100 cm³; accepted is less than 100 cm³',
  ],
  [
    'a hose shorter than nothing',
    'length: 14 in',
    'length: ▸-14 in',
    'parts.hose.length is -14 in; accepted is 1.97 in to 98.4 in',
  ],
  [
    'a hose that shrinks under pressure',
    '1500 psi, 0.16 cm³/ft',
    '1500 psi, ▸0.12 cm³/ft',
    'parts.hose.expansion[1][1] is 0.12 cm³/ft (0.394 cm³/m), less than the row before it although the pressure is higher; accepted is at least 0.14 cm³/ft (0.46 cm³/m)',
  ],
  [
    'a table in falling order',
    '[1500 psi, 0.16',
    '▸[900 psi, 0.16',
    'parts.hose.expansion[1] does not rise above the row before it; give the rows in rising order',
  ],
  [
    'half a row',
    '[1000 psi, 0.14 cm³/ft]',
    '▸[1000 psi]',
    'parts.hose.expansion[0] has 1 entries; accepted is at least 2',
  ],
  [
    'a piston wider than the pad',
    'pistons: [54 mm]',
    'pistons: [▸90 mm]',
    'parts.front-caliper.pistons[0] is 3.54 in (90 mm), far wider than the pad "front-pad" is high, 1.85 in (47 mm); accepted is at most 2.96 in (75.2 mm)',
  ],
  [
    'a piston like a bucket',
    'pistons: [54 mm]',
    'pistons: [▸540 mm]',
    'parts.front-caliper.pistons[0] is 540 mm; accepted is 15 mm to 100 mm',
  ],
  [
    'no piston',
    'pistons: [54 mm]',
    'pistons: ▸[]',
    'parts.front-caliper.pistons has 0 entries; accepted is at least 1',
  ],
  [
    'a piston that is no list',
    'pistons: [54 mm]',
    'pistons: ▸54 mm',
    'parts.front-caliper.pistons is "54 mm"; accepted is a list',
  ],
  [
    'pistons larger than the pad',
    'pistons: [54 mm]\n  front-pad:\n    kind: pad\n    title: Front pad\n    class: road\n    area: 46 cm²',
    'pistons: [54 mm, 54 mm, 54 mm]\n  front-pad:\n    kind: pad\n    title: Front pad\n    class: road\n    area: ▸46 cm²',
    'parts.front-pad.area is 7.13 in² (46 cm²), smaller than the pistons of "front-caliper" that press on it (pistons are counted on ONE side); accepted is at least 10.7 in² (68.8 cm²)',
  ],
  [
    'an area that is a length',
    'area: 46 cm²',
    'area: ▸46 cm',
    'parts.front-pad.area can\'t be read: "46 cm" is a length; an area is wanted, e.g. "7.5 in²" or "48 cm²"',
  ],
  [
    'a pad larger than its band',
    'area: 46 cm²',
    'area: ▸290 cm²',
    'parts.front-pad.area is 45 in² (290 cm²), more than half of the band that a pad of this height sweeps on the rotor "front-rotor"; accepted is at most 26.4 in² (170 cm²)',
  ],
  [
    'a pad taller than its band, so that the effective radius leaves the rotor',
    'radialHeight: 47 mm',
    'radialHeight: ▸100 mm',
    'parts.front-pad.radialHeight is 3.94 in (100 mm), more than fits between hub and edge of the rotor "front-rotor"; accepted is at most 3.55 in (90.3 mm)',
  ],
  [
    'a friction of 4',
    '[400 °F, 0.40]',
    '[400 °F, ▸4.0]',
    'parts.front-pad.friction[1][1] is 4; accepted is 0.05 to 1',
  ],
  [
    'a 90 in rotor',
    'outerDiameter: 280 mm',
    'outerDiameter: ▸90 in',
    'parts.front-rotor.outerDiameter is 90 in; accepted is 4.73 in to 19.6 in',
  ],
  [
    'a rotor larger than the rim',
    'outerDiameter: 280 mm',
    'outerDiameter: ▸430 mm',
    'parts.front-rotor.outerDiameter is 16.9 in (430 mm), too large for the wheel inside the tire "tire" (size 205/55 R16, rim 16 in (406 mm)); accepted is less than 16 in (406 mm)',
  ],
  [
    'a swept band outside the rotor',
    'sweptOuterDiameter: 278 mm',
    'sweptOuterDiameter: ▸300 mm',
    'parts.front-rotor.sweptOuterDiameter is 11.8 in (300 mm), outside the rotor of 11 in (280 mm); accepted is at most 11 in (280 mm)',
  ],
  [
    'cheeks that leave no vent',
    'cheekThickness: 7 mm',
    'cheekThickness: ▸12 mm',
    'parts.front-rotor.cheekThickness is 0.472 in (12 mm), so that two cheeks fill the whole thickness of 0.945 in (24 mm) and leave no vent; accepted is less than 0.472 in (12 mm)',
  ],
  [
    'a cheek thicker than half of a solid rotor',
    'cheekThickness: 5 mm',
    'cheekThickness: ▸6 mm',
    'parts.rear-rotor.cheekThickness is 0.236 in (6 mm), more than half of the thickness of 0.394 in (10 mm); accepted is at most 0.196 in (5 mm)',
  ],
  [
    'a ring heavier than a full disc',
    'ringMass: 5 kg',
    'ringMass: ▸12 kg',
    "parts.front-rotor.ringMass is 26.5 lb (12 kg), more than a full disc of the rotor's size, 23.5 lb (10.6 kg); accepted is at most 23.4 lb (10.6 kg)",
  ],
  [
    'a rotor lighter than its ring',
    'mass: 7.5 kg',
    'mass: ▸4 kg',
    'parts.front-rotor.mass is 8.82 lb (4 kg), less than its swept ring of 11 lb (5 kg); accepted is at least 11.1 lb (5 kg)',
  ],
  [
    'a part that is not there',
    'frontPad: front-pad',
    'frontPad: ▸fornt-pad',
    'setUps.as-found.frontPad names "fornt-pad", a part that is not under parts; did you mean "front-pad"?',
  ],
  [
    'a rotor for a pad',
    'frontPad: front-pad',
    'frontPad: ▸front-rotor',
    'setUps.as-found.frontPad names "front-rotor", a rotor; a pad belongs there: front-pad, rear-pad',
  ],
  [
    'a set-up that is not there',
    'setUp: as-found',
    'setUp: ▸as-fund',
    'runs[0].setUp names "as-fund", a set-up that is not under setUps; did you mean "as-found"?',
  ],
  [
    'a set-up based on itself',
    '    title: As found',
    '    title: As found\n    basedOn: ▸as-found',
    'setUps.as-found.basedOn goes round in a circle: as-found → as-found; one of them must stand by itself',
  ],
  [
    'a version in words',
    'standstill: 2',
    'standstill: ▸two',
    'standstill is "two"; accepted versions of the job document are 1 to 2',
  ],
];

/** The file with the mistake, and its place as the mark has it. */
function written([, from, to]: BadJob): string {
  expect(soundJobText.split(from), `"${from}" is there once`).toHaveLength(2);
  const text = soundJobText.replace(from, () => to);
  const before = text.slice(0, text.indexOf(mark));
  expect(text).toContain(mark);
  writeFileSync(file, text.replace(mark, ''));
  const line = before.split('\n').length;
  return `${line}:${before.length - before.lastIndexOf('\n')}`;
}

describe('check', () => {
  it('finds nothing wrong with the job that is then made wrong', async () => {
    writeFileSync(file, soundJobText);
    expect(await runHere('check', file)).toMatchObject({ code: 0, err: '' });
  });

  it.each(badJobs)('%s', async (...bad) => {
    const place = written(bad);
    const { code, out, err } = await runHere('check', file);
    const lines = out.trimEnd().split('\n');
    expect({ code, err, lines: lines.length, first: lines[0] }).toEqual({
      code: 1,
      err: '',
      lines: 2,
      first: `${file}: one mistake.`,
    });
    const [, , , message] = bad;
    const line = `${file}:${place}: ${message.replace('~', '')}`;
    if (message.startsWith('~')) expect(lines[1]?.slice(0, line.length)).toBe(line);
    else expect(lines[1]).toBe(line);
    await tellsPrograms(place);
  });
});

/** As data the same mistake has its place, what was found and what is accepted. */
async function tellsPrograms(place: string): Promise<void> {
  const { out } = await runHere('check', file, '--json');
  const result = JSON.parse(out) as {
    readonly files: readonly { readonly problems: readonly Readonly<Record<string, unknown>>[] }[];
  };
  const [problem] = result.files[0]?.problems ?? [];
  expect(`${String(problem?.['line'])}:${String(problem?.['column'])}`).toBe(place);
  expect(String(problem?.['found'])).not.toBe('');
  expect(String(problem?.['accepted']).length).toBeGreaterThan(3);
}

describe.each(commandsTaking('job'))('%s', (command) => {
  it.each([badJobs[0], badJobs.find(([name]) => name === 'a rotor larger than the rim'), badJobs.at(-1)])(
    'does nothing with a job that is wrong: %s',
    async (...given) => {
      const bad = given as unknown as BadJob;
      const place = written(bad);
      const { code, out, err } = await runHere(command, file);
      expect({ code, out }).toEqual({ code: 3, out: '' });
      expect(err).toBe(`${file}:${place}: ${bad[3]}\n`);
    },
  );
});

describe('other doors to a job', () => {
  const [bad] = badJobs;

  it('compare --job does nothing with a job that is wrong', async () => {
    if (bad === undefined) throw new Error('no bad job');
    const place = written(bad);
    const logs = ['before.csv', 'after.csv'].map((name) =>
      join(repository, 'examples/hill-climb-coupe', name),
    );
    const { code, out, err } = await runHere('compare', ...logs, '--job', file);
    expect({ code, out }).toEqual({ code: 3, out: '' });
    expect(err).toBe(`${file}:${place}: ${bad[3]}\n`);
  });

  it('serve --demo does not start with a job that is wrong', async () => {
    if (bad === undefined) throw new Error('no bad job');
    const place = written(bad);
    const data = join(folder, 'data');
    const words = ['serve', '--port', '0', '--data', data, '--no-open', '--demo', file];
    const { code, out, err } = await runHere(...words);
    expect({ code, out }).toEqual({ code: 3, out: '' });
    expect(err).toBe(`${file}:${place}: ${bad[3]}\n`);
  });
});

/** `accepted is at most 3.56 in (90.4 mm)` or `accepted is 4.73 in to 19.6 in`: every number there. */
function acceptedOf(message: string): readonly string[] {
  const accepted = / accepted is (?:at (?:most|least) )?(.+)$/.exec(message)?.[1] ?? '';
  if (!/^-?\d/.test(accepted)) return [];
  return accepted.split(/ to | \(|\)/).filter((part) => part !== '');
}

/** Wrong jobs that name a number that would do, and the number. */
const remedies = badJobs.flatMap(([name, from, to, message]) =>
  message.includes(' entries; ')
    ? []
    : acceptedOf(message).map((number) => [name, number, from, to] as const),
);

describe('what is said to be accepted', () => {
  it('is a number in many of the lines', () => {
    expect(remedies.length).toBeGreaterThan(40);
  });

  it.each(remedies)('%s: with %s nothing more is said of it', async (_name, number, from, to) => {
    const before = to.slice(0, to.indexOf(mark));
    const mistake = await mistakeIn(from, to.replace(mark, ''));
    const mended = to.replace(/▸\{ value: [^,}]*|▸[^\n\],]*/, () => number);
    expect(mended.startsWith(before + number)).toBe(true);
    expect(await mistakeIn(from, mended)).not.toBe(mistake);
  });
});

/** Code and path of the first mistake in the job that is changed so; nothing where there is none. */
async function mistakeIn(from: string, to: string): Promise<unknown> {
  writeFileSync(
    file,
    soundJobText.replace(from, () => to),
  );
  const { out } = await runHere('check', file, '--json');
  const result = JSON.parse(out) as {
    readonly files: readonly { readonly problems: readonly Readonly<Record<string, unknown>>[] }[];
  };
  const [problem] = result.files[0]?.problems ?? [];
  return problem === undefined ? '' : `${String(problem['code'])} ${String(problem['path'])}`;
}
