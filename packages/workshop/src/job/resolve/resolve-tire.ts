import { tireClasses } from '@standstill/braking';
import type { TireClass } from '@standstill/braking';
import { tireFacts } from '../facts/tire-facts.ts';
import type { TirePart } from '../job.ts';
import { pathText } from '../reading/path-text.ts';
import type { DocumentPath } from '../reading/position.ts';
import { shown } from '../reading/shown.ts';
import { classOf } from './class-of.ts';
import { fillFacts } from './fill-facts.ts';
import { fromClass, practice } from './filler.ts';
import type { Fallback, Filler } from './filler.ts';
import type { PartOf } from './part-of.ts';
import { tireSize } from './tire-size.ts';
import type { TireSize } from './tire-size.ts';

/** A tire with every fact known. */
export function resolveTire(filler: Filler, id: string, part: PartOf<'tire'>): TirePart {
  const path = ['parts', id];
  const because = 'no class is given; grip is the largest unknown of a stop, so name the class or measure';
  const found = classOf<TireClass>(filler, {
    classes: tireClasses,
    id: part.class,
    path,
    otherwise: 'road',
    because,
  });
  const size = statedSize(filler, part.size, path);
  const facts = fillFacts(filler, {
    facts: tireFacts,
    stated: part,
    path,
    fallbacks: {
      rollingRadius: size === null ? 'needed' : () => radiusFromSize(size),
      peakFriction: () => fromClass(found.title, found.peakFriction),
      nominalLoad: () => fromClass(found.title, found.nominalLoad),
      loadSensitivity: () => fromClass(found.title, found.loadSensitivity),
      slideRatio: () => fromClass(found.title, found.slideRatio),
      peakSlip: () => fromClass(found.title, found.peakSlip),
      slipStiffness: () => fromClass(found.title, found.slipStiffness),
      relaxationLength: () => fromClass(found.title, found.relaxationLength),
      treadDepth: () => practice(0.006, 0.001, 'a tread about half worn'),
    },
  });
  return { kind: 'tire', id, title: part.title, className: part.class ?? null, size, facts };
}

/** The size as it can be read; null where none is given. */
function statedSize(filler: Filler, written: string | undefined, path: DocumentPath): TireSize | null {
  if (written === undefined) return null;
  const size = tireSize(written);
  if (size !== null) return size;
  const accepted = 'a size as on the sidewall, such as 205/50 R16';
  const message = `${pathText(path)}.size is ${shown(written)}; accepted is ${accepted}`;
  filler.findings.push({
    code: 'unreadable-size',
    path: [...path, 'size'],
    at: 'value',
    found: shown(written),
    accepted,
    message,
  });
  // Never used: the job is refused.
  return { written, rimDiameter: 0.4, freeRadius: 0.3, rollingRadius: 0.3 };
}

function radiusFromSize({ written, rollingRadius: value }: TireSize): Fallback {
  const reason = `from the size ${written}: 97 % of the free radius, common practice`;
  return { value, spread: 0.01 * value, reason };
}
