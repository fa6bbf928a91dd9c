import { preferredUnit, quantityKinds, type UnitPreferences } from '@standstill/units';
import {
  readQuantity,
  type Fact,
  type Origin,
  type QuantityInput,
  type QuantityRecord,
} from '@standstill/workshop';
import { measure } from '../units/measure.ts';

/** How a value of the document reads in its field: as it was typed, with its spread. */
export function fieldText(input: QuantityInput | undefined): string {
  if (input === undefined) return '';
  if (typeof input !== 'object') return String(input);
  const amount = input.unit === undefined ? String(input.value) : `${input.value} ${input.unit}`;
  return input.spread === undefined ? amount : `${amount} ± ${input.spread}`;
}

/** How the value is known; what does not say so counts as specified. */
export function originOf(input: QuantityInput): Origin {
  return typeof input === 'object' ? (input.origin ?? 'specified') : 'specified';
}

export type FieldReading =
  | { readonly ok: true; readonly input: QuantityInput | undefined }
  | { readonly ok: false; readonly message: string };

/**
 * Reads what was typed into a field: '94.5 in', '94.5 in ± 0.2 in'. Empty takes the value out, where it may be assumed.
 * Origin and note of the value before are kept.
 */
export function readFieldText(text: string, fact: Fact, before: QuantityInput | undefined): FieldReading {
  const typed = text.trim();
  if (typed === '' && !fact.required) return { ok: true, input: undefined };
  const input = inputFrom(typed, before);
  const reading = readQuantity(input, fact);
  if (reading.ok) return { ok: true, input };
  return { ok: false, message: refusal(reading.message, reading.accepted) };
}

function inputFrom(typed: string, before: QuantityInput | undefined): QuantityInput {
  const [value = '', spread] = typed.split(/\s*(?:±|\+\/?-)\s*/);
  const record: QuantityRecord = typeof before === 'object' ? before : { value };
  const { unit: _unit, spread: _spread, ...kept } = record;
  const plain = spread === undefined && kept.origin === undefined && kept.note === undefined;
  if (plain) return value;
  return spread === undefined ? { ...kept, value } : { ...kept, value, spread };
}

/** The same value with another origin. */
export function withOrigin(input: QuantityInput, origin: Origin): QuantityInput {
  return typeof input === 'object' ? { ...input, origin } : { value: input, origin };
}

/** The value in the person's own unit, where it was typed in another: '= 2400 mm'; null where there is nothing to add. */
export function inOwnUnit(input: QuantityInput, fact: Fact, preferences: UnitPreferences): string | null {
  const reading = readQuantity(input, fact);
  const unit = preferredUnit(fact.kind, preferences);
  if (!reading.ok || unit === '1' || fieldText(input).includes(unit)) return null;
  if (quantityKinds[fact.kind].dimension === 'ratio') return null;
  return `= ${measure(fact.kind, preferences).exact(reading.value)}`;
}

/** The message as a sentence, and what is accepted where it does not say so itself. */
function refusal(message: string, accepted: string): string {
  const sentence = ended(capital(message));
  return message.includes(accepted) ? sentence : `${sentence} Accepted: ${ended(accepted)}`;
}

/** One mark at the end: a question keeps its own, and so does a unit behind it. */
function ended(text: string): string {
  return /[.?!]["”)]?$/.test(text) ? text : `${text}.`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
