import type { ClassCurve, ClassValue } from '@standstill/braking';
import type { QuantityInput } from '../document/quantity-input.ts';
import { readQuantity } from '../document/read-quantity.ts';
import { defaultSpread } from '../facts/default-spreads.ts';
import type { Fact } from '../facts/fact.ts';
import type { Filling } from '../filling.ts';
import type { Known } from '../known.ts';
import type { Finding } from '../reading/finding.ts';
import { pathText } from '../reading/path-text.ts';
import type { DocumentPath } from '../reading/position.ts';

/** What to take where nothing is stated: SI, one standard deviation, and where it comes from. */
export interface Fallback {
  readonly value: number;
  readonly spread: number;
  readonly reason: string;
}

/** Collects what was filled in and what can't be, while a document becomes a job. */
export class Filler {
  readonly fillings: Filling[] = [];
  readonly findings: Finding[] = [];
  /** How many stated values took their spread from the table. */
  spreadsTaken = 0;

  /** A value that the person states; its spread from the table where none is given. */
  stated(fact: Fact, input: QuantityInput, path: DocumentPath): Known {
    const reading = readQuantity(input, fact);
    if (!reading.ok) throw new TypeError(`${pathText(path)} was not checked by the schema`);
    const { value, origin } = reading;
    const spread = reading.spread ?? defaultSpread(fact.spread, origin, value);
    if (reading.spread === null && spread > 0) this.spreadsTaken += 1;
    if (origin === 'assumed') this.list(fact, path, value, spread, 'marked as assumed in the job');
    return { value, origin, spread, path: pathText(path), low: fact.low, high: fact.high, fact };
  }

  /** A value that is filled in, and listed. */
  assumed(fact: Fact, path: DocumentPath, fallback: Fallback): Known {
    const { value, spread, reason } = fallback;
    this.list(fact, path, value, spread, reason);
    return { value, origin: 'assumed', spread, path: pathText(path), low: fact.low, high: fact.high, fact };
  }

  /** Something filled in that is no number. */
  assumedWord(path: DocumentPath, title: string, value: string, reason: string): void {
    this.fillings.push({ path: pathText(path), title, value, reason });
  }

  /** A value that nothing can stand in for; the job is refused, and the placeholder never leaves. */
  missing(fact: Fact, path: DocumentPath): Known {
    const accepted = `the ${fact.title.charAt(0).toLowerCase()}${fact.title.slice(1)}, such as ${fact.example}`;
    const message = `${pathText(path)} is missing; give ${accepted}`;
    this.findings.push({ code: 'missing', path, at: 'key', found: 'nothing', accepted, message });
    return {
      value: fact.low,
      origin: 'assumed',
      spread: 0,
      path: pathText(path),
      low: fact.low,
      high: fact.high,
      fact,
    };
  }

  private list(fact: Fact, path: DocumentPath, number: number, spread: number, reason: string): void {
    const value = { kind: fact.kind, number, spread };
    this.fillings.push({ path: pathText(path), title: fact.title, value, reason });
  }
}

/** A fallback from the library of classes, with its origin and note. */
export function fromClass(title: string, value: ClassValue): Fallback {
  return { value: value.value, spread: value.spread, reason: classReason(title, value) };
}

/** How a class value is introduced to the reader. */
export function classReason(title: string, value: ClassValue | ClassCurve): string {
  return `class default: ${title}, ${value.known}. ${value.note}`;
}

/** A fallback that the trade takes for granted. */
export function practice(value: number, spread: number, note: string): Fallback {
  return { value, spread, reason: `common practice: ${note}` };
}
