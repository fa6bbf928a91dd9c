import { z } from 'zod';

/** What a column of a log may be said to be: as the reader of logs calls it. */
export const columnRoles = [
  'time',
  'speed',
  'wheel-speed',
  'acceleration-forward',
  'acceleration-lateral',
  'acceleration-vertical',
  'latitude',
  'longitude',
  'altitude',
  'heading',
  'distance',
  'brake-switch',
  'brake-pressure',
  'pedal-force',
  'pedal-travel',
  'temperature',
  'fix-quality',
] as const;

const column = z.strictObject({
  /** The heading, or `column 3` in a file without headings. */
  name: z.string().min(1).max(500),
  unit: z.string().max(40).optional(),
  /** Multiplies the numbers before the unit is applied. */
  scale: z.number().optional(),
  /** True where the person is not sure: results are then marked as resting on an assumed scale. */
  assumed: z.boolean().optional(),
});

const columns = z
  .union([column, z.array(column).min(1).max(40)])
  .meta({ title: 'Column, or list of columns', examples: ['{ name: Speed, unit: km/h }'] });

const columnsByRole = z.strictObject(
  Object.fromEntries(columnRoles.map((role) => [role, columns.optional()])) as {
    [R in (typeof columnRoles)[number]]: z.ZodOptional<typeof columns>;
  },
);

/** A person's word on the columns of all logs that have one and the same line of headings. */
export const logColumnsSchema = z.strictObject({
  /** All headings joined with ` | `, as the report of a log shows them. */
  headings: z.string().min(1).max(20_000),
  columns: columnsByRole,
});

export type LogColumnsDocument = z.infer<typeof logColumnsSchema>;
