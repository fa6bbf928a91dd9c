import { describe, expect, test } from 'vitest';
import { rearFirst } from './rear-first.ts';

const plain = {
  id: 'a',
  title: 'A',
  found: null,
  coldOnly: false,
  hot: null,
  share: 0,
  shareHot: null,
} as const;
const states = ['as-tested', 'laden'] as const;
const none = { kind: 'none', electronicRearLimit: false } as const;
const abs = { kind: 'threshold', efficiency: 0.9, minimumSpeed: 2, electronicRearLimit: true } as const;

describe('rear first', () => {
  test('names only what the car has', () => {
    const found = { lowest: 0.6, highest: 0.8, states, byDriveAlone: false };
    expect(rearFirst({ ...plain, antilock: none, found })?.message).toMatch(
      /from 0\.60 to 0\.80 g, as tested and laden\. A car/,
    );
    expect(rearFirst({ ...plain, antilock: abs, found })?.message).toContain('with ABS and EBD failed');
    const limited = { ...none, electronicRearLimit: true };
    expect(rearFirst({ ...plain, antilock: limited, found })?.message).toContain(
      '0.80 g, as tested and laden with EBD failed',
    );
  });

  test('says in which state of load, with which pads and by which drive', () => {
    const found = { lowest: 0.6, highest: 0.8, states: ['laden'] as const, byDriveAlone: true };
    const message = rearFirst({ ...plain, antilock: none, found, coldOnly: true })?.message;
    expect(message).toContain('0.80 g, laden, while the drive regenerates or creeps with cold pads. A car');
  });

  test.each([
    [0.01, undefined],
    [0.05, 'caution'],
    [0.24, 'caution'],
    [0.25, 'danger'],
  ])('a share of %d of the draws is %s', (share, severity) => {
    expect(rearFirst({ ...plain, antilock: none, share })?.severity).toBe(severity);
    expect(rearFirst({ ...plain, antilock: none, shareHot: share })?.severity).toBe(severity);
  });
});
