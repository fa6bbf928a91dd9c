import { describe, expect, it } from 'vitest';
import { predict } from '../predict/predict.ts';
import type { Job } from './job.ts';
import { newJobText } from './new-job-text.ts';
import { readJob } from './reading/read-job.ts';

function jobOf(text: string): Job {
  const reading = readJob(text, { file: 'new.yaml' });
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
  return reading.job;
}

describe('the job to start from', () => {
  const { setUps, warnings } = predict(jobOf(newJobText('New')));

  it('locks its front wheels first, cold and after its repeated stops, and is free of danger', () => {
    expect(warnings.filter(({ severity }) => severity !== 'note')).toEqual([]);
    expect(setUps).toHaveLength(2);
    for (const { balance } of setUps) {
      expect(balance.firstToLock).toBe('front');
      expect(balance.rearFirstShare).toBeLessThan(0.02);
    }
  });

  it('has examples that can be taken as they stand: ABS, fluid, hoses, a run', () => {
    const text = newJobText('New');
    const taken = text
      .replaceAll(/^( +)# (?=(?:abs|fluid|hose|frontHose|rearHose): )/gm, '$1')
      .replace('antilock: none # or abs', 'antilock: abs #')
      .replace(/# runs:\n(?:# .*\n)+/, (lines) => lines.replaceAll(/^# /gm, ''));
    const {
      parts,
      setUps: [asFound],
      runs,
    } = jobOf(taken);
    const { antilock, fluid, frontHose, rearHose, rearValve } = asFound?.slots ?? {};
    expect({ antilock, fluid, frontHose, rearHose, rearValve }).toEqual({
      antilock: 'abs',
      fluid: 'fluid',
      frontHose: 'hose',
      rearHose: 'hose',
      rearValve: 'valve',
    });
    expect(parts['abs']).toMatchObject({ kind: 'antilock', electronicRearLimit: true });
    expect(runs).toHaveLength(1);
  });
});
