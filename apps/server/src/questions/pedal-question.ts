import { pedalReport, readPedalPoints, reportPedal } from '@standstill/workshop';
import type { ReportPedalOptions } from '@standstill/workshop';
import { z } from 'zod';
import { jobQuestion } from './job-question.ts';
import type { OptionsReading } from './job-question.ts';
import { questionOption } from './question-option.ts';
import { withoutUnits } from './without-units.ts';

const { draws, seed, units } = questionOption;

const pedalOptions = z.strictObject({
  /** Id; the car as found where left out. */
  setUp: z.string().exactOptional(),
  pedalForce_N: z.number().min(5).max(2000).exactOptional(),
  /** Deceleration to give the firmness at. */
  deceleration_m_s2: z.number().min(0.1).max(20).exactOptional(),
  /** Pushes from light to hard, `20 lbf 1.1 in; 40 lbf 1.6 in; …`, or a table with headings. */
  measured: z
    .strictObject({ engine: z.enum(['running', 'off']), points: z.string().min(1).max(20_000) })
    .exactOptional(),
  draws,
  seed,
  units,
});

/** Says what the pedal of a set-up does, and what a measured one tells. */
export const pedalQuestion = jobQuestion({
  path: '/api/pedal',
  summary: 'Where the travel of a pedal goes, what a lost circuit leaves, and what measured pushes tell',
  options: pedalOptions,
  report: pedalReport,
  read: readPedalOptions,
  compute: reportPedal,
});

function readPedalOptions(options: z.infer<typeof pedalOptions>): OptionsReading<ReportPedalOptions> {
  const { measured, ...rest } = withoutUnits(options);
  if (measured === undefined) return { ok: true, asked: rest };
  const { engine, points } = measured;
  const reading = readPedalPoints(points, null);
  return reading.ok
    ? { ok: true, asked: { ...rest, measured: { engine, points: reading.points } } }
    : reading;
}
