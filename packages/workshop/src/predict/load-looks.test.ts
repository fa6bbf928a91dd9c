import { describe, expect, it } from 'vitest';
import { exampleJobText } from '../job/example-job.testing.ts';
import { readJob } from '../job/reading/read-job.ts';
import { settle } from '../settle/settle.ts';
import type { Settled } from '../settle/settle.ts';
import { loadLooks } from './load-looks.ts';
import { coldPads, rearFirstRange, rearFirstWith, startPads } from './lock-looks.ts';

function settledWith(...changes: readonly (readonly [from: string, to: string])[]): Settled {
  const text = changes.reduce((changed, [from, to]) => {
    if (!changed.includes(from)) throw new Error(`no "${from}" in the example`);
    return changed.replace(from, to);
  }, exampleJobText);
  const reading = readJob(text, { file: 'job.yaml' });
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
  return settle(reading.job, 'as-found');
}

const wheelbase = '  wheelbase: 96 in\n';

describe('every state of load and drive', () => {
  it('is as tested and laden, and with what the drive does', () => {
    expect(loadLooks(settledWith()).map(({ state, byDrive }) => [state, byDrive])).toEqual([
      ['as-tested', false],
      ['laden', false],
    ]);
    const driven = settledWith([wheelbase, `${wheelbase}  regeneration: { share: 15 % }\n`]);
    expect(loadLooks(driven).map(({ byDrive }) => byDrive)).toEqual([false, true, false, true]);
  });

  it('finds a rear-first lock that only the laden car has', () => {
    const light = settledWith([
      wheelbase,
      `${wheelbase}  laden: { mass: 1500 kg, frontLoadShare: 70 %, centerOfGravityHeight: 30 in }\n`,
    ]);
    const found = rearFirstRange(light, startPads(light));
    expect(found?.states).toEqual(['laden']);
    expect(rearFirstWith(light, startPads(light))).toBe(true);
    expect(rearFirstWith(settledWith(), startPads(settledWith()))).toBe(false);
  });

  it('finds one that takes motors that brake the rear wheels', () => {
    const driven = settledWith([
      wheelbase,
      `${wheelbase}  regeneration: { share: 30 % }\n  frontDriveShare: 0 %\n`,
    ]);
    expect(rearFirstRange(driven, startPads(driven))).toMatchObject({ byDriveAlone: true });
  });

  it('finds one that takes pads as cold as the air', () => {
    const cold = settledWith(
      [
        'title: Stock front pads, class: road',
        'title: Front pads, friction: [[60 °F, 0.12], [200 °F, 0.42]]',
      ],
      ['title: Rear pads, class: road', 'title: Rear pads, friction: 0.42'],
    );
    expect(rearFirstWith(cold, startPads(cold))).toBe(false);
    expect(rearFirstWith(cold, coldPads(cold))).toBe(true);
  });
});
