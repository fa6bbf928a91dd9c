import { scheduleOptions } from '@standstill/workshop';
import type { HeatScheduleKind, ScheduleOption } from '@standstill/workshop';
import { z } from 'zod';
import { fewDraws, questionOption } from './question-option.ts';

const { speed_m_s, pedalForce_N, seed, setUps, units } = questionOption;
const kinds = Object.keys(scheduleOptions) as [HeatScheduleKind, ...HeatScheduleKind[]];

const options = z.strictObject({
  /** `laps` where there are points, else `stops`. */
  schedule: z.enum(kinds).exactOptional(),
  speed_m_s,
  pedalForce_N,
  /** Stops, or laps. */
  count: z.number().int().min(1).max(200).exactOptional(),
  /** From one stop to the next. */
  interval_s: z.number().positive().max(36_000).exactOptional(),
  /** Height lost in a descent. */
  drop_m: z.number().min(1).max(6000).exactOptional(),
  /** Fall over run of a descent: 0.08 is 8 %. */
  grade: z.number().min(0.005).max(0.3).exactOptional(),
  /** Of what grade asks beyond air and rolling: 0.6 is 60 %. */
  brakeShare: z.number().min(0).max(1).exactOptional(),
  /** Braking points of a lap, `110 mph, 45 mph, 22 s; 95 mph, 50 mph, 18 s`, or a table with headings. */
  points: z.string().min(1).max(20_000).exactOptional(),
  draws: fewDraws,
  seed,
  setUps,
  units,
});

export type HeatOptions = z.infer<typeof options>;

/** How each is sent. */
const names: Readonly<Record<ScheduleOption, keyof HeatOptions>> = {
  speed: 'speed_m_s',
  pedalForce: 'pedalForce_N',
  count: 'count',
  interval: 'interval_s',
  drop: 'drop_m',
  grade: 'grade',
  brakeShare: 'brakeShare',
  points: 'points',
};

/** Which schedule to drive, and how; what means nothing for it is refused. */
export const heatOptions = options.superRefine((sent, context) => {
  const kind = scheduleKind(sent);
  const taken = scheduleOptions[kind];
  const accepted = taken.length === 0 ? 'nothing' : taken.map((option) => names[option]).join(', ');
  for (const [option, name] of Object.entries(names)) {
    if (sent[name] === undefined || taken.some((each) => each === option)) continue;
    const message = `means nothing for the schedule ${kind}, of which may be said: ${accepted}`;
    context.addIssue({ code: 'custom', path: [name], message });
  }
  if (kind === 'laps' && sent.points === undefined)
    context.addIssue({
      code: 'custom',
      path: ['points'],
      message: 'the schedule laps needs the braking points of a lap',
    });
});

/** The schedule that is meant. */
export function scheduleKind({
  schedule,
  points,
}: Pick<HeatOptions, 'schedule' | 'points'>): HeatScheduleKind {
  return schedule ?? (points === undefined ? 'stops' : 'laps');
}
