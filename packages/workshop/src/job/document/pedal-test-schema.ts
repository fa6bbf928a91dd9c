import { z } from 'zod';
import { pedalPointFacts } from '../facts/pedal-point-facts.ts';
import { quantitySchema } from './quantity-schema.ts';

export const corners = ['front-left', 'front-right', 'rear-left', 'rear-right'] as const;

const point = z.strictObject({
  /** Of force and line pressure exactly one. */
  force: quantitySchema(pedalPointFacts.force).optional(),
  linePressure: quantitySchema(pedalPointFacts.linePressure).optional(),
  travel: quantitySchema(pedalPointFacts.travel),
  /** Corners shut off at their lines by a plug for this push. A hose is never clamped. */
  plugged: z.array(z.enum(corners)).max(4).optional(),
});

/** Pushes of one pedal in one state of the engine, each held, from light to hard. */
export const pedalTestSchema = z.strictObject({
  setUp: z.string(),
  /** `off` means off and with the vacuum pumped out by pushes. */
  engine: z.enum(['running', 'off']),
  date: z.string().max(40).optional(),
  notes: z.string().max(10_000).optional(),
  points: z.array(point).min(1).max(200),
});

export type PedalTestDocument = z.infer<typeof pedalTestSchema>;
export type PedalPointDocument = PedalTestDocument['points'][number];
