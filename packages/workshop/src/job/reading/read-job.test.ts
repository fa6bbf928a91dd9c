import { describe, expect, it } from 'vitest';
import { exampleJobText } from '../example-job.testing.ts';
import { readJob } from './read-job.ts';

function problemsOf(text: string, file = 'job.yaml'): string[] {
  const reading = readJob(text, { file });
  if (reading.ok) throw new Error('the job was accepted');
  return reading.problems.map(({ line, column, code, message }) => `${line}:${column} ${code}: ${message}`);
}

/** The example with one thing changed; fails where the text to change is not there. */
function changed(from: string, to: string): string {
  if (!exampleJobText.includes(from)) throw new Error(`no "${from}" in the example`);
  return exampleJobText.replace(from, to);
}

describe('a good job', () => {
  const reading = readJob(exampleJobText, { file: 'job.yaml' });
  if (!reading.ok) throw new Error(reading.problems[0]?.message);
  const { job, assumed } = reading;

  it('is in SI with origin and spread', () => {
    const { mass, wheelbase } = job.car.facts;
    expect(mass.value).toBeCloseTo(2650 * 0.45359237, 12);
    expect(mass.origin).toBe('measured');
    expect(mass.spread).toBeCloseTo(20 * 0.45359237, 12);
    expect([wheelbase.origin, wheelbase.value]).toEqual(['specified', 2.4384]);
  });

  it('lets a set-up take what it does not change from the one it is based on', () => {
    const [asFound, kit] = job.setUps;
    expect([kit?.slots.rearPad, kit?.slots.frontPad]).toEqual([asFound?.slots.rearPad, 'kit-pad']);
  });

  it('lists what was filled in, with where it comes from', () => {
    expect(assumed.find(({ path }) => path === 'car.dragArea')).toEqual({
      path: 'car.dragArea',
      title: 'Drag area',
      text: '6.7 ft² ± 0.6 ft²',
      reason: 'class default: two-seat coupe or roadster, engine in front, common practice',
    });
    expect(assumed.find(({ path }) => path === 'car.centerOfGravityHeight')?.reason).toBe(
      'marked as assumed in the job',
    );
    expect(assumed.some(({ path }) => path === 'car.mass')).toBe(false);
  });

  it('lists every value that no one stated, and no other', () => {
    const stated = new Set(assumed.map(({ path }) => path));
    const facts = Object.values(job.parts).flatMap((part) => Object.values(part.facts));
    const filled = facts.filter(({ origin }) => origin === 'assumed').map(({ path }) => path);
    expect(filled.length).toBeGreaterThan(60);
    expect(filled.filter((path) => !stated.has(path))).toEqual([]);
  });
});

describe('a mistake in a job gets one clear line', () => {
  const cases: readonly (readonly [name: string, text: string, line: string])[] = [
    [
      'a typo in a unit',
      changed('96 in', '96 inn'),
      '10:14 unit-unknown: car.wheelbase can\'t be read: "96 inn": unknown unit "inn"; did you mean "in"?',
    ],
    [
      'a missing wheelbase',
      changed('  wheelbase: 96 in\n', ''),
      '6:1 missing: car.wheelbase is missing; give the wheelbase, such as 96 in',
    ],
    [
      'an empty wheelbase',
      changed('wheelbase: 96 in', 'wheelbase:'),
      '10:3 missing: car.wheelbase is empty; give the wheelbase, such as 96 in',
    ],
    [
      'a 200 % front share',
      changed('value: 53 %', 'value: 200 %'),
      '12:19 out-of-range: car.frontLoadShare is 200 %; accepted is 20 % to 80 %',
    ],
    [
      'a tab for spaces',
      changed('  mass:', '\tmass:'),
      '9:1 job-tabs: this line is indented with a tab; YAML accepts only spaces there',
    ],
    [
      'a missing unit',
      changed('wheelbase: 96 in', 'wheelbase: 96'),
      '10:14 unit-missing: car.wheelbase can\'t be read: "96" has no unit; a length is wanted, e.g. "14 in" or "355 mm"',
    ],
    [
      'a wrong dimension',
      changed('wheelbase: 96 in', 'wheelbase: 96 lb'),
      '10:14 unit-wrong-dimension: car.wheelbase can\'t be read: "96 lb" is a mass; a length is wanted, e.g. "14 in" or "355 mm"',
    ],
    [
      'a 3 kg car',
      changed('2650 lb', '3 kg'),
      '9:9 out-of-range: car.mass is 3 kg; accepted is 150 kg to 8000 kg',
    ],
    [
      'a 90 in rotor',
      changed('11.75 in', '90 in'),
      '42:77 out-of-range: parts.kit-rotor.outerDiameter is 90 in; accepted is 4.73 in to 19.6 in',
    ],
    [
      'an unknown key',
      changed('runs:', 'wheels: 4\nruns:'),
      '81:1 unknown-key: "wheels" is not a key known at the top of a job; known here: standstill, title, complaint, notice, car, conditions, parts, setUps, runs, test, logColumns, pedalPoints',
    ],
    [
      'a key typed wrong, told once',
      changed('wheelbase:', 'wheelbse:'),
      '10:3 unknown-key: "wheelbse" is not a key known in car; did you mean "wheelbase"?',
    ],
    [
      'an unknown choice',
      changed('kind: tire', 'kind: tyre'),
      '24:18 unknown-choice: parts.tires.kind is "tyre"; did you mean "tire"? Accepted: tire, pedal, booster, master-cylinder, rear-valve, antilock, fluid, caliper, pad, rotor, hose, tube, drum, parking-brake',
    ],
    [
      'an unknown part',
      changed('frontPad: stock-pad', 'frontPad: stok-pad'),
      '61:15 unknown-part: setUps.as-found.frontPad names "stok-pad", a part that is not under parts; did you mean "stock-pad"?',
    ],
    [
      'ABS told by yes',
      changed('    antilock: abs', '    antilock: yes'),
      '58:15 unknown-part: setUps.as-found.antilock names "yes", a part that is not under parts; accepted is the id of a part of kind antilock: abs, or none',
    ],
    [
      'ABS told by its name where no part is ABS',
      changed('  abs: { kind: antilock, title: ABS, electronicRearLimit: false }\n', ''),
      '57:15 unknown-part: setUps.as-found.antilock names "abs", a part that is not under parts; accepted is the id of a part of kind antilock (under parts, "abs: { kind: antilock, title: ABS, electronicRearLimit: true }"), or none',
    ],
    [
      'ABS told by true',
      changed('    antilock: abs', '    antilock: true'),
      '58:15 wrong-kind: setUps.as-found.antilock is true; accepted is the id of a part of kind antilock (under parts, "abs: { kind: antilock, title: ABS, electronicRearLimit: true }"), or none',
    ],
    [
      'silicone fluid named in the slot',
      changed('    fluid: fluid', '    fluid: DOT 5'),
      '59:12 fluid-not-modeled: setUps.as-found.fluid names "DOT 5", a part that is not under parts; silicone fluid (DOT 5) is not modeled; it must never be mixed with DOT 3, 4 or 5.1, and has no place in a car with ABS unless its maker allows it',
    ],
    [
      'a fluid named in the slot, of which none is guessed',
      changed('    fluid: fluid', '    fluid: fluit'),
      '59:12 unknown-part: setUps.as-found.fluid names "fluit", a part that is not under parts; accepted is the id of a part of kind fluid: fluid',
    ],
    [
      'a part of the wrong kind',
      changed('frontPad: stock-pad', 'frontPad: stock-rotor'),
      '61:15 wrong-part-kind: setUps.as-found.frontPad names "stock-rotor", a rotor; a pad belongs there: stock-pad, kit-pad, rear-pad',
    ],
    [
      'a part that is left out',
      changed('    pedal: pedal\n', ''),
      "49:3 missing: setUps.as-found.pedal is missing: the pedal can't be assumed; give the id of a part of kind pedal: pedal",
    ],
    [
      'an unknown set-up',
      changed('setUp: front-kit', 'setUp: frontkit'),
      '83:25 unknown-set-up: runs[1].setUp names "frontkit", a set-up that is not under setUps; did you mean "front-kit"?',
    ],
    [
      'set-ups in a circle',
      changed('title: As found\n', 'title: As found\n    basedOn: hoses-only\n'),
      '51:14 set-up-cycle: setUps.as-found.basedOn goes round in a circle: as-found → hoses-only → as-found; one of them must stand by itself',
    ],
    [
      'an unknown class',
      changed('class: road,', 'class: raod,'),
      '32:59 unknown-class: parts.stock-pad.class is "raod"; did you mean "road"? Accepted: road, fastRoad, track, organic, ceramicType, lowMetal, semiMetal',
    ],
    [
      'an effective radius outside the rotor',
      changed('radialHeight: 46 mm', 'radialHeight: 130 mm'),
      '41:19 contradiction: parts.kit-pad.radialHeight is 5.12 in (130 mm), more than fits between hub and edge of the rotor "kit-rotor"; accepted is at most 3.79 in (96.3 mm)',
    ],
    [
      'a piston wider than its pad',
      changed('[54 mm]', '[90 mm]'),
      '31:90 contradiction: parts.stock-caliper.pistons[0] is 3.54 in (90 mm), far wider than the pad "stock-pad" is high, 1.77 in (45 mm); accepted is at most 2.83 in (72 mm)',
    ],
    [
      'pistons larger than the pad',
      changed('[41 mm, 36 mm]', '[60 mm, 60 mm]'),
      '40:11 contradiction: parts.kit-pad.area is 8.06 in² (52 cm²), smaller than the pistons of "kit-caliper" that press on it (pistons are counted on ONE side); accepted is at least 8.77 in² (56.6 cm²)',
    ],
    [
      'a fact that means nothing there',
      changed('bore: 7/8 in', 'bore: 7/8 in, frontBore: 1 in'),
      '27:74 contradiction: parts.master.frontBore has no meaning on a tandem cylinder; take it out, or change the type',
    ],
    [
      'a key given twice',
      changed('complaint:', 'title:'),
      '3:1 job-duplicate-key: this key is already given above; keep one of the two',
    ],
    [
      'a friction table in falling order',
      changed('class: road, area', 'friction: [[200 °C, 0.4], [20 °C, 0.3]], area'),
      '32:78 not-ascending: parts.stock-pad.friction[1] does not rise above the row before it; give the rows in rising order',
    ],
    [
      'a friction of 4',
      changed('class: road, area', 'friction: [[20 °C, 4]], area'),
      '32:71 out-of-range: parts.stock-pad.friction[0][1] is 4; accepted is 0.05 to 1',
    ],
    [
      'a tire size that is none',
      changed('205/50 R16', 'fat'),
      '24:68 unreadable-size: parts.tires.size is "fat"; accepted is a size as on the sidewall, such as 205/50 R16',
    ],
    [
      'a spread that is none',
      changed('spread: 20 lb', 'spread: 2 furlongs'),
      '9:9 unreadable-number: car.mass has the spread "2 furlongs"; accepted is a spread such as "2 %", or an amount with a unit, not below zero and within what the value can be',
    ],
    [
      'an id with a space',
      changed('  stock-pad:', '  Stock Pad:'),
      '32:3 wrong-kind: parts.Stock Pad: an id is made of small letters, digits and hyphens, such as front-kit',
    ],
    [
      'the same run twice',
      changed('id: after', 'id: before'),
      '83:11 duplicate-id: runs[1].id is "before", which an earlier run has; give each run an id of its own',
    ],
    [
      'a role that no run has',
      changed('id: after,', 'id: after, role: afterwards,'),
      '83:24 unknown-choice: runs[1].role is "afterwards"; accepted: before, after, repeat, reference-before, reference-after, fade',
    ],
    [
      'a wind that is no speed',
      changed('id: after,', 'id: after, headWind: 5 ft,'),
      '83:28 unit-wrong-dimension: runs[1].headWind can\'t be read: "5 ft" is a length; a speed is wanted, e.g. "60 mph" or "100 km/h"',
    ],
    [
      'a key of a run typed wrong',
      changed('id: after,', 'id: after, roadTemperature: 20 °C,'),
      '83:18 unknown-key: "roadTemperature" is not a key known in runs[1]; did you mean "tireTemperature"?',
    ],
    [
      'tires hotter than rubber stands',
      changed('id: after,', 'id: after, tireTemperature: 500 °F,'),
      '83:35 out-of-range: runs[1].tireTemperature is 500 °F; accepted is -58 °F to 392 °F',
    ],
    [
      'a judgement without a reason',
      changed('id: after,', 'id: after, judgements: [{ at: 3 s, verdict: rejected }],'),
      '83:31 missing: runs[1].judgements[0].reason is missing; give text',
    ],
    [
      'a window of temperatures upside down',
      changed('runs:', 'test: { startTemperatureLow: 90 °C, startTemperatureHigh: 70 °C }\nruns:'),
      '81:59 contradiction: test.startTemperatureHigh is a hottest start that is not above the coldest; accepted is a startTemperatureHigh above the startTemperatureLow',
    ],
    [
      'the columns of one kind of log told twice',
      changed(
        'runs:',
        'logColumns:\n  - { headings: a | b, columns: { speed: { name: a } } }\n  - { headings: a | b, columns: { speed: { name: b } } }\nruns:',
      ),
      '83:17 contradiction: logColumns[1].headings are the same headings as logColumns[0]; accepted is one entry for each line of headings',
    ],
    [
      'a column that is only named',
      changed('runs:', 'logColumns: [{ headings: a | b, columns: { speed: a } }]\nruns:'),
      '81:51 wrong-kind: logColumns[0].columns.speed is "a"; accepted is the column, or list of columns, such as { name: Speed, unit: km/h }',
    ],
    [
      'a newer version',
      changed('standstill: 2', 'standstill: 3'),
      '1:13 job-version-newer: this job is written in version 3, by a newer program; this one reads 1 to 2. Nothing was read or changed; update the program',
    ],
    [
      'no version',
      changed('standstill: 2\n', ''),
      '1:1 job-version-missing: this is not a job, or its version is missing; the first line of a job is "standstill: 2"',
    ],
    [
      'something that is no job',
      'time;speed\n1;2\n',
      '1:1 job-not-a-document: this is not a job: found "time;speed 1;2"; accepted is a block of keys that starts with "standstill: 2"',
    ],
    [
      'an empty file',
      '',
      '1:1 job-not-a-document: this is not a job: found nothing; accepted is a block of keys that starts with "standstill: 2"',
    ],
    [
      'an alias',
      'standstill: 2\na: &x [1]\nb: *x\n',
      '3:4 job-alias: aliases (*name) are not read; write the value out where it is used',
    ],
    [
      'broken YAML',
      changed('car:\n', 'car: [\n'),
      "7:9 job-syntax: the text can't be read as YAML from here: a key must stand on one line; is a bracket, brace or quote left open above?",
    ],
  ];

  it.each(cases)('%s', (_name, text, line) => {
    const problems = problemsOf(text);
    expect(problems[0]).toBe(line);
    expect(problems).toHaveLength(1);
  });

  it('names the file and says what was found and what is accepted', () => {
    const reading = readJob(changed('96 in', '96 inn'), { file: 'jobs/coupe.yaml' });
    expect(reading.ok ? null : reading.problems).toEqual([
      {
        code: 'unit-unknown',
        file: 'jobs/coupe.yaml',
        line: 10,
        column: 14,
        path: 'car.wheelbase',
        found: '96 inn',
        accepted: 'the wheelbase such as 96 in; units: mm, m, in, ft, cm, µm, thou, yd, km, mi',
        message: 'car.wheelbase can\'t be read: "96 inn": unknown unit "inn"; did you mean "in"?',
      },
    ]);
  });

  it('tells separate mistakes one by one, in the order of the file', () => {
    const text = changed('96 in', '96 inn').replace('53 %', '200 %').replace('11.75 in', '90 in');
    expect(problemsOf(text).map((line) => line.split(' ')[1])).toEqual([
      'unit-unknown:',
      'out-of-range:',
      'out-of-range:',
    ]);
  });
});

describe('several mistakes of different kinds', () => {
  const codes = (text: string): readonly string[] =>
    problemsOf(text).map((line) => line.replace(/^\S+ (\S+): (\S+) .*$/s, '$1 $2'));

  it('are told in one pass: a unit, a class, a name and two facts that contradict each other', () => {
    const text = changed('96 in', '96 inn')
      .replace('radialHeight: 46 mm', 'radialHeight: 130 mm')
      .replace('rearPad: rear-pad', 'rearPad: rear-pd')
      .replace('class: rubber', 'class: rubbr')
      .replace('setUp: front-kit', 'setUp: frontkit');
    expect(codes(text)).toEqual([
      'unit-unknown car.wheelbase',
      'unknown-class parts.stock-hose.class',
      'contradiction parts.kit-pad.radialHeight',
      'unknown-part setUps.as-found.rearPad',
      'unknown-set-up runs[1].setUp',
    ]);
  });

  it('never tell what only follows from another', () => {
    expect(codes(changed('radialHeight: 46 mm', 'radialHeight: 46 mn'))).toEqual([
      'unit-unknown parts.kit-pad.radialHeight',
    ]);
    expect(codes(changed('    frontPad: stock-pad', '    frontPd: stock-pad'))).toHaveLength(1);
    expect(codes(changed('[54 mm]', '[54 mmm]').replace('area: 42 cm²', 'area: 1 furlong'))).toHaveLength(2);
    const tall = changed('96 in', '96 inn').replace('18.5 in', '60 in');
    expect(codes(tall)).toEqual(['unit-unknown car.wheelbase']);
  });

  it('leave a slot with a typo in its key and the mistakes elsewhere', () => {
    const text = changed('    frontPad: stock-pad', '    frontPd: stock-pad').replace(
      'bore: 7/8 in',
      'bore: 7/8 in, frontBore: 1 in',
    );
    expect(problemsOf(text).map((line) => line.split(' ')[1])).toEqual(['contradiction:', 'unknown-key:']);
  });

  it('are told beside a contradiction where a part is missing a fact', () => {
    const text = changed('radialHeight: 46 mm', 'radialHeight: 130 mm').replace(
      'ratio: 4.1',
      'freePlay: 0.3 in',
    );
    expect(codes(text)).toEqual(['missing parts.pedal.ratio', 'contradiction parts.kit-pad.radialHeight']);
  });
});

describe('JSON', () => {
  it('has lines too', () => {
    expect(problemsOf('{ "standstill": 2,\n  "title": "x" "car": 1 }', 'job.json')).toEqual([
      "2:16 job-syntax: the text can't be read as JSON from here: expected ',' or '}' after property value",
    ]);
    expect(problemsOf('{\n  "standstill": 9\n}', 'job.json')[0]).toMatch(/^2:17 job-version-newer/);
  });

  it('refuses the same key twice, which other readers let pass', () => {
    expect(problemsOf('{ "standstill": 2, "title": "a", "title": "b" }', 'job.json')[0]).toMatch(
      /job-duplicate-key/,
    );
  });
});

describe('text that would hurt the program', () => {
  it.each([
    ['brackets nested 300,000 deep', '['.repeat(300_000)],
    ['dashes nested 300,000 deep', '- '.repeat(300_000)],
    ['question marks nested 300,000 deep', '? '.repeat(300_000)],
    ['braces that quoted text seems to close', '{"]":'.repeat(2000)],
  ])('%s', (_name, text) => {
    expect(problemsOf(text)).toHaveLength(1);
    expect(problemsOf(text)[0]).toMatch(/job-too-deep/);
  });

  it('an alias bomb', () => {
    const rows = Array.from({ length: 9 }, (_, i) => `a${i + 1}: &a${i + 1} [${`*a${i}, `.repeat(9)}]`);
    expect(problemsOf(`standstill: 2\na0: &a0 [x]\n${rows.join('\n')}\n`)).toHaveLength(1);
  });

  it('more than a job can hold', () => {
    expect(problemsOf(`standstill: 2\nnotice: "${'x'.repeat(3_000_000)}"\n`)).toEqual([
      'null:null job-too-large: the file has 3.0 million characters; a job has at most 2 million. Is it a log? Logs are kept beside the job',
    ]);
  });

  it('does not take __proto__ for a part', () => {
    expect(problemsOf(changed('parts:\n', 'parts:\n  __proto__: { kind: tire, title: x }\n'))[0]).toMatch(
      /^24:3 unknown-key: "__proto__"/,
    );
  });
});
