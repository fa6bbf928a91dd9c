import { z } from 'zod';
import { conditionsFacts } from '../facts/conditions-facts.ts';
import { judgementFacts, runFacts } from '../facts/run-facts.ts';
import { idPattern } from './id-pattern.ts';
import { quantitySchema, quantityShape } from './quantity-schema.ts';

/** What a run is for. A `repeat` is the old set-up once more after the new one; a reference is another car, left alone. */
export const runRoles = ['before', 'after', 'repeat', 'reference-before', 'reference-after', 'fade'] as const;

export type RunRole = (typeof runRoles)[number];

/** A person's word on one stop of the run's log. */
const judgement = z.strictObject({
  at: quantitySchema(judgementFacts.at),
  verdict: z.enum(['rejected', 'restored']),
  reason: z.string().min(1).max(500),
  by: z.string().max(200).optional(),
  date: z.string().max(40).optional(),
});

/** One log of stops, with what was true while it was driven. */
export const runSchema = z.strictObject({
  id: z.string().regex(idPattern),
  /** Of a reference car, which has no set-up here: that of the car beside it. */
  setUp: z.string(),
  role: z.enum(runRoles).optional(),
  /** File beside the job, or id of a kept log. */
  log: z.string().min(1).max(500),
  nominalSpeed: quantitySchema(conditionsFacts.speed).optional(),
  /** Of two ways over one stretch, so that grade and wind can be told. */
  direction: z.enum(['out', 'back']).optional(),
  ...quantityShape(runFacts),
  date: z.string().max(40).optional(),
  driver: z.string().max(200).optional(),
  logger: z.string().max(200).optional(),
  tires: z.string().max(500).optional(),
  surface: z.string().max(500).optional(),
  notes: z.string().max(10_000).optional(),
  judgements: z.array(judgement).max(200).optional(),
});

export type RunDocument = z.infer<typeof runSchema>;
export type JudgementDocument = z.infer<typeof judgement>;
