import { z } from 'zod';
import { carFacts } from '../facts/car-facts.ts';
import { driveFacts, ladenFacts } from '../facts/laden-facts.ts';
import { hubFacts } from '../facts/hub-facts.ts';
import { conditionsFacts, repeatedStopsFacts } from '../facts/conditions-facts.ts';
import { testFacts } from '../facts/test-facts.ts';
import { partSchema } from './part-schemas.ts';
import { pedalTestSchema } from './pedal-test-schema.ts';
import { partSlots } from './part-slots.ts';
import type { PartSlot } from './part-slots.ts';
import { idPattern } from './id-pattern.ts';
import { logColumnsSchema } from './log-columns-schema.ts';
import { quantityShape } from './quantity-schema.ts';
import { runSchema } from './run-schema.ts';

/** The version of the job document that this program writes. */
export const jobDocumentVersion = 2;

const title = z.string().min(1).max(200);
const longText = z.string().max(10_000);
const id = z.string().regex(idPattern);
/** As the classes of surfaces. */
const surface = z.enum(['dry', 'worn', 'damp', 'wet', 'gravel', 'packedSnow', 'ice']);

/** What the drive does by itself, as a share of the car's weight. */
const drive = z.union([z.literal('none'), z.strictObject(quantityShape(driveFacts))]);

const car = z.strictObject({
  name: title,
  /** Id of the stated class whose defaults fill what is left out. */
  class: z.string().min(1).max(80).optional(),
  note: longText.optional(),
  ...quantityShape(carFacts),
  /** What moves the rotors sideways and so knocks the pads back. */
  hubs: z.strictObject(quantityShape(hubFacts)).optional(),
  /** The same car with everybody and everything in it; `mass` above is the car as tested. */
  laden: z.strictObject(quantityShape(ladenFacts)).optional(),
  /** Motors that slow the car beside the brakes. */
  regeneration: drive.optional(),
  /** A drive that pushes at idle. */
  creep: drive.optional(),
  /** Pedal and line pressure linked by software alone: refused, not guessed. */
  brakeByWire: z.enum(['yes', 'no']).optional(),
});

const conditions = z.strictObject({
  surface: surface.optional(),
  ...quantityShape(conditionsFacts),
  repeatedStops: z
    .strictObject({
      count: z.number().int().min(1).max(60).optional(),
      ...quantityShape(repeatedStopsFacts),
    })
    .optional(),
});

const slotShape = Object.fromEntries(
  Object.keys(partSlots).map((slot) => [slot, z.string().min(1).optional()]),
) as {
  [S in PartSlot]: z.ZodOptional<z.ZodString>;
};

const setUp = z.strictObject({
  title,
  /** Id of the set-up that this one changes; only the changed slots follow. */
  basedOn: z.string().optional(),
  circuitSplit: z.enum(['front-rear', 'diagonal']).optional(),
  note: longText.optional(),
  ...slotShape,
});

/** What a test of the set-ups is wanted to show. */
const test = z.strictObject(quantityShape(testFacts));

/** A job is for people to look through: far beyond that, something else was written into the file. */
function atMost(most: number, what: string) {
  return (record: object, context: z.RefinementCtx): void => {
    const count = Object.keys(record).length;
    if (count >= 1 && count <= most) return;
    const accepted = `1 to ${most} ${what}`;
    const params = {
      code: 'out-of-range',
      found: `${count} ${what}`,
      accepted,
      message: `has ${count} ${what}; accepted is ${accepted}`,
    };
    context.addIssue({ code: 'custom', message: accepted, params });
  };
}

/** The job document as people write it: one car, its parts, the set-ups made of them, and the measured runs. */
export const jobDocumentSchema = z.strictObject({
  standstill: z.literal(jobDocumentVersion),
  title,
  complaint: longText.optional(),
  /** Said wherever the job is shown: `Invented car and parts.` */
  notice: longText.optional(),
  car,
  conditions: conditions.optional(),
  parts: z.record(id, partSchema).superRefine(atMost(1000, 'parts')),
  /** The first is the car as found unless one says otherwise; others may be `basedOn` it. */
  setUps: z.record(id, setUp).superRefine(atMost(24, 'set-ups')),
  runs: z.array(runSchema).max(500).optional(),
  test: test.optional(),
  /** Remembered columns of logs, found again by their line of headings. */
  logColumns: z.array(logColumnsSchema).max(100).optional(),
  /** Measured pedals: pushes from light to hard. */
  pedalPoints: z.array(pedalTestSchema).max(50).optional(),
});

export type JobDocument = z.infer<typeof jobDocumentSchema>;
export type CarDocument = z.infer<typeof car>;
export type ConditionsDocument = z.infer<typeof conditions>;
export type SetUpDocument = z.infer<typeof setUp>;
export type TestDocument = z.infer<typeof test>;
