import { simulate, simulationReport } from '@standstill/workshop';
import { z } from 'zod';
import { jobQuestion } from './job-question.ts';
import { fewDraws } from './question-option.ts';
import { stopOptions } from './stop-options.ts';
import { withoutUnits } from './without-units.ts';

const simulateOptions = z.strictObject({
  ...stopOptions.shape,
  draws: fewDraws,
  /** The foot seeks this deceleration instead. */
  deceleration_m_s2: z.number().min(0.1).max(20).exactOptional(),
  /** A foot that stays down where there is no ABS, so that wheels lock and slide. */
  lockedWheels: z.boolean().exactOptional(),
  /** Whether each set-up's stop over time is in the report. */
  trace: z.boolean().exactOptional(),
});

/** Says how set-ups stop with all four wheels turning. */
export const simulateQuestion = jobQuestion({
  path: '/api/simulate',
  summary: 'How the set-ups of a job stop with slip, pitch, pressures and a generic ABS that cycles',
  options: simulateOptions,
  report: simulationReport,
  read: (options) => ({ ok: true, asked: withoutUnits(options) }),
  compute: simulate,
});
