import { z } from 'zod';
import * as facts from '../facts/part-facts.ts';
import { quantitySchema, quantityShape } from './quantity-schema.ts';

const title = z.string().min(1).max(200);
const note = z.string().max(2000).optional();
const className = z.string().min(1).max(80).optional();
const about = { title, note };
/** For kinds that have stated classes whose defaults fill what is left out. */
const classed = { title, class: className, note };

export const tirePart = z.strictObject({
  kind: z.literal('tire'),
  ...classed,
  /** Size as on the sidewall, `205/50 R16`: gives the rolling radius where none is stated. */
  size: z.string().max(30).optional(),
  ...quantityShape(facts.tireFacts),
});

export const pedalPart = z.strictObject({
  kind: z.literal('pedal'),
  ...about,
  ...quantityShape(facts.pedalFacts),
});

export const boosterPart = z.strictObject({
  kind: z.literal('booster'),
  ...about,
  type: z.enum(['vacuum', 'hydraulic']),
  ...quantityShape(facts.boosterFacts),
  ...quantityShape(facts.boosterDetailsFacts),
});

export const masterCylinderPart = z.strictObject({
  kind: z.literal('master-cylinder'),
  ...about,
  type: z.enum(['tandem', 'balance-bar']).optional(),
  /** Axle on the primary piston of a tandem cylinder; of a diagonal split, the axle makes no difference. */
  primaryFeeds: z.enum(['front', 'rear']).optional(),
  ...quantityShape(facts.masterCylinderFacts),
  ...quantityShape(facts.masterCylinderDetailsFacts),
});

export const rearValvePart = z.strictObject({
  kind: z.literal('rear-valve'),
  ...about,
  ...quantityShape(facts.rearValveFacts),
});

export const antilockPart = z.strictObject({
  kind: z.literal('antilock'),
  ...about,
  /** True where the control unit also limits rear slip by itself (electronic distribution). */
  electronicRearLimit: z.boolean().optional(),
  ...quantityShape(facts.antilockFacts),
});

export const fluidPart = z.strictObject({
  kind: z.literal('fluid'),
  ...classed,
  ...quantityShape(facts.fluidFacts),
});

export const caliperPart = z.strictObject({
  kind: z.literal('caliper'),
  ...about,
  type: z.enum(['floating', 'fixed']),
  /** Diameters of the pistons on ONE side. */
  pistons: z.array(quantitySchema(facts.pistonFact)).min(1).max(8),
  /** Decides how much of the pads' heat reaches the fluid. */
  pistonMaterial: z.enum(['steel', 'aluminum', 'phenolic']).optional(),
  ...quantityShape(facts.caliperFacts),
  ...quantityShape(facts.caliperHeatFacts),
});

export const padPart = z.strictObject({
  kind: z.literal('pad'),
  ...classed,
  /** One figure, or a table of [interface temperature, friction] in rising order. */
  friction: z
    .union([
      quantitySchema(facts.padFrictionFact),
      z
        .array(z.tuple([quantitySchema(facts.padTemperatureFact), quantitySchema(facts.padFrictionFact)]))
        .min(1)
        .max(40),
    ])
    .optional(),
  /** How pressure spreads over the face; a bedded pad wears evenly. */
  contact: z.enum(['uniform-pressure', 'uniform-wear']).optional(),
  ...quantityShape(facts.padFacts),
  ...quantityShape(facts.padHeatFacts),
});

export const rotorPart = z.strictObject({
  kind: z.literal('rotor'),
  ...classed,
  type: z.enum(['solid', 'vented']),
  ...quantityShape(facts.rotorFacts),
  ...quantityShape(facts.rotorHeatFacts),
});

export const hosePart = z.strictObject({
  kind: z.literal('hose'),
  ...classed,
  /** Table of [pressure, growth per length] in rising order. */
  expansion: z
    .array(z.tuple([quantitySchema(facts.hosePressureFact), quantitySchema(facts.hoseExpansionFact)]))
    .min(1)
    .max(40)
    .optional(),
  ...quantityShape(facts.hoseFacts),
});

export const tubePart = z.strictObject({
  kind: z.literal('tube'),
  ...about,
  ...quantityShape(facts.tubeFacts),
});

/** A drum brake of the rear axle: it stands where calipers, pads and rotors would. */
export const drumPart = z.strictObject({
  kind: z.literal('drum'),
  ...about,
  type: z.enum(['simplex', 'duplex', 'duo-servo']),
  /** Of the lining: one figure, or a table of [interface temperature, friction] in rising order. */
  friction: z
    .union([
      quantitySchema(facts.liningFrictionFact),
      z
        .array(z.tuple([quantitySchema(facts.padTemperatureFact), quantitySchema(facts.liningFrictionFact)]))
        .min(1)
        .max(40),
    ])
    .optional(),
  ...quantityShape(facts.drumFacts),
});

export const parkingBrakePart = z.strictObject({
  kind: z.literal('parking-brake'),
  ...about,
  /** What it pulls: shoes inside the rotor's hat, the rear caliper, or the shoes of the rear drum. */
  type: z.enum(['drum-in-hat', 'caliper', 'drum']),
  operatedBy: z.enum(['hand', 'foot']).optional(),
  ...quantityShape(facts.parkingBrakeFacts),
});

export const partSchema = z.discriminatedUnion('kind', [
  tirePart,
  pedalPart,
  boosterPart,
  masterCylinderPart,
  rearValvePart,
  antilockPart,
  fluidPart,
  caliperPart,
  padPart,
  rotorPart,
  hosePart,
  tubePart,
  drumPart,
  parkingBrakePart,
]);

export type PartDocument = z.infer<typeof partSchema>;
export type PartKind = PartDocument['kind'];
