import { quantityKinds } from '@standstill/units';
import type { z } from 'zod';
import type { Fact, Facts } from '../facts/fact.ts';
import { quantityInput } from './quantity-input.ts';
import { readQuantity } from './read-quantity.ts';

/** The schema of one quantity: its shape for the JSON Schema, its unit and range by the fact behind it. */
export function quantitySchema(fact: Fact): typeof quantityInput {
  return quantityInput
    .superRefine((input, context) => {
      const reading = readQuantity(input, fact);
      if (!reading.ok)
        context.addIssue({ code: 'custom', message: reading.accepted, params: { ...reading } });
    })
    .meta({
      title: fact.title,
      examples: [fact.example],
      description: `A quantity: ${quantityKinds[fact.kind].dimension}`,
    });
}

type Shape<F extends Facts> = {
  -readonly [K in keyof F]: F[K] extends { readonly required: true }
    ? typeof quantityInput
    : z.ZodOptional<typeof quantityInput>;
};

/** The schemas of a table of facts, optional where the fact may be assumed. */
export function quantityShape<F extends Facts>(facts: F): Shape<F> {
  const entries = Object.entries(facts).map(([key, fact]) => {
    const schema = quantitySchema(fact);
    return [key, fact.required === true ? schema : schema.optional()] as const;
  });
  return Object.fromEntries(entries) as Shape<F>;
}
