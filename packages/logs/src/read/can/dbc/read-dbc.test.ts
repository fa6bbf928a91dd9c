import { describe, expect, test } from 'vitest';
import { issueList } from '../../../channels/issue-list.ts';
import { decodeSignal } from '../decode-signal.ts';
import { readDbc } from './read-dbc.ts';
import type { MessageDescription } from './signal-description.ts';

function messageOf(text: string, id = 100): MessageDescription {
  const issues = issueList();
  const read = readDbc(text, 'made.dbc', issues);
  if (!read.ok) throw new Error(read.sentence);
  expect(issues.list()).toEqual([]);
  return read.messages.get(id)!;
}

function issuesOf(text: string): readonly string[] {
  const issues = issueList();
  readDbc(text, 'made.dbc', issues);
  return issues.list().map(({ code, line }) => `${code}@${line}`);
}

const head = 'BO_ 100 M: 8 X\n';
/** The bytes 01 23 45 67 89 AB CD EF. */
const bytes = Uint8Array.of(0x01, 0x23, 0x45, 0x67, 0x89, 0xab, 0xcd, 0xef);

describe('bits', () => {
  /** Worked by hand from the bytes. */
  test.each([
    ['0|8@1+', 0x01],
    ['0|16@1+', 0x2301],
    ['4|8@1+', 0x30],
    ['8|12@1+', 0x523],
    ['7|8@0+', 0x01],
    ['7|16@0+', 0x0123],
    ['3|8@0+', 0x12],
    ['23|12@0+', 0x456],
    ['56|8@1-', -17],
    ['63|8@0-', -17],
    ['55|16@0-', 0xcdef - 0x10000],
    ['63|1@0+', 1],
    ['7|64@0+', Number(0x0123456789abcdefn)],
    ['0|64@1-', Number(0xefcdab8967452301n - (1n << 64n))],
  ])('%s', (layout, raw) => {
    const [signal] = messageOf(`${head} SG_ A : ${layout} (1,0) [0|0] "" X`).signals;
    expect(decodeSignal(signal!, bytes)).toBe(raw);
  });

  test('factor and offset', () => {
    const [signal] = messageOf(`${head} SG_ A : 7|16@0+ (0.0062,-67.67) [0|250] "mph" X`).signals;
    expect(decodeSignal(signal!, bytes)).toBeCloseTo(0x0123 * 0.0062 - 67.67, 12);
    expect(signal).toMatchObject({ unit: 'mph', range: { least: 0, greatest: 250 } });
  });

  test('sixty-four signed bits near zero stay exact', () => {
    const [signal] = messageOf(`${head} SG_ A : 0|64@1- (1,0) [0|0] "" X`).signals;
    expect(decodeSignal(signal!, new Uint8Array(8).fill(255))).toBe(-1);
  });

  test('floats of both sizes and orders', () => {
    const dbc = `${head} SG_ A : 0|32@1- (2,1) [0|0] "" X\n SG_ B : 39|32@0- (1,0) [0|0] "" X\nSIG_VALTYPE_ 100 A : 1;\nSIG_VALTYPE_ 100 B : 1;\n`;
    const data = new Uint8Array(8);
    new DataView(data.buffer).setFloat32(0, 1.5, true);
    new DataView(data.buffer).setFloat32(4, -2.25, false);
    expect(messageOf(dbc).signals.map((signal) => decodeSignal(signal, data))).toEqual([4, -2.25]);
    const double = `${head} SG_ A : 0|64@1- (1,0) [0|0] "" X\nSIG_VALTYPE_ 100 A : 2;\n`;
    new DataView(data.buffer).setFloat64(0, 0.1, true);
    expect(decodeSignal(messageOf(double).signals[0]!, data)).toBe(0.1);
    data.fill(255);
    expect(decodeSignal(messageOf(double).signals[0]!, data)).toBeNaN();
  });
});

describe('what a file may hold', () => {
  test('a fragment without a head, and everything that is passed over', () => {
    const text = [
      '\uFEFFCM_ "IMPORT other.dbc";',
      'CM_ SG_ 100 A "a comment over lines',
      'BO_ 7 NOT_A_MESSAGE: 8 X',
      ' SG_ broken: and \\" quoted',
      'that ends here";',
      'BO_ 100 M: 8 X',
      '  SG_ A : 0|8@1+ (1,0) [0|0] "km/h"  X,Y',
      '\tSG_ B:8|8@1+(1,0)[0|0]"°C" Vector__XXX',
      'VAL_ 100 A 1 "BO_ 5 ONE: 1 X" 0 "zero" ;',
      'BA_ "GenMsgCycleTime" BO_ 100 20;',
      'EV_ name: 0 [0|0] "" 0 1 DUMMY_NODE_VECTOR0 X;',
    ].join('\r\n');
    expect(messageOf(text).signals.map(({ name, unit }) => [name, unit])).toEqual([
      ['A', 'km/h'],
      ['B', '°C'],
    ]);
  });

  test('signals that are in no frame are left out without a word', () => {
    const text = `BO_ 3221225472 VECTOR__INDEPENDENT_SIG_MSG: 0 Vector__XXX\n SG_ A : 0|8@1+ (1,0) [0|0] "" X\n${head} SG_ B : 0|8@1+ (1,0) [0|0] "" X`;
    expect(messageOf(text).signals).toHaveLength(1);
  });

  test('multiplexing by m0, by ranges, in two steps', () => {
    const signals = [
      'S M : 0|8@1+ (1,0) [0|0] ""',
      'A m0 : 8|8@1+ (1,0) [0|0] ""',
      'T m1M : 8|8@1+ (1,0) [0|0] ""',
      'B m1 : 16|8@1+ (1,0) [0|0] ""',
    ].map((signal) => ` SG_ ${signal} X`);
    const text = [
      head.trim(),
      ...signals,
      'SG_MUL_VAL_ 100 A S 0-0;',
      'SG_MUL_VAL_ 100 T S 1-1, 5-6;',
      'SG_MUL_VAL_ 100 B T 3-4;',
    ].join('\n');
    expect(messageOf(text).signals.map(({ presence }) => presence)).toEqual([
      null,
      { by: 'S', values: [{ from: 0, to: 0 }] },
      {
        by: 'S',
        values: [
          { from: 1, to: 1 },
          { from: 5, to: 6 },
        ],
      },
      { by: 'T', values: [{ from: 3, to: 4 }] },
    ]);
  });

  test.each([
    ['SG_ A : 60|8@1+ (1,0) [0|0] "" X', 'signal-impossible@2'],
    ['SG_ A : 63|9@0+ (1,0) [0|0] "" X', 'signal-impossible@2'],
    ['SG_ A m1 : 0|8@1+ (1,0) [0|0] "" X', 'signal-impossible@2'],
    ['SG_ A : 0|8@1- (1,0) [0|0] "" X\nSIG_VALTYPE_ 100 A : 1;', 'signal-impossible@2'],
    ['SG_ A : 0|8@1+ (1,0) [0|0] "" X\nSG_ A : 8|8@1+ (1,0) [0|0] "" X', 'signal-impossible@3'],
    ['SG_ A : 0|8@1+ (1,0) [0|0] "" X\nBO_ 100 N: 8 X', 'double-description@3'],
  ])('%s is told: %s', (lines, told) => expect(issuesOf(`${head}${lines}`)).toEqual([told]));

  test.each([
    [`${head} SG_ A : 0|8@2+ (1,0) [0|0] "" X`, 'line 2'],
    [`${head} SG_ A : 0|65@1+ (1,0) [0|0] "" X`, 'line 2'],
    [`${head} SG_ A : 0|8@1+ (0,0) [0|0] "" X`, 'line 2'],
    [`${head} SG_ A : 0|8@1+ (1e999,0) [0|0] "" X`, 'line 2'],
    [`${head} SG_ A : 0|8@1+ (1;0) [0|0] "" X`, 'line 2'],
    [' SG_ A : 0|8@1+ (1,0) [0|0] "" X', 'line 1'],
    ['\n\nBO_ x M: 8 X', 'line 3'],
    ['BO_ 100 M: 65 X', 'line 1'],
  ])('%j is refused with its line and what is accepted', (text, place) => {
    const read = readDbc(text, 'made.dbc', issueList());
    expect(read).toMatchObject({ ok: false, code: 'signals-not-read' });
    expect(read.ok ? '' : read.sentence).toMatch(new RegExp(`^made\\.dbc .*${place}: .*accepted is .*\\.$`));
  });
});
