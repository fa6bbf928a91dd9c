import type { JobDocument } from '../document/job-document.ts';
import type { PedalPointDocument, PedalTestDocument } from '../document/pedal-test-schema.ts';
import { pedalPointFacts } from '../facts/pedal-point-facts.ts';
import type { JobPedalPoint, JobPedalTest } from '../job.ts';
import type { Known } from '../known.ts';
import { pathText } from '../reading/path-text.ts';
import type { DocumentPath } from '../reading/position.ts';
import type { Filler } from './filler.ts';
import { pointTroubles } from './point-troubles.ts';
import { unknownId } from './unknown-id.ts';

/** The measured pedals: each on a set-up that is there, with points that say something. */
export function resolvePedalTests(filler: Filler, document: JobDocument): JobPedalTest[] {
  return (document.pedalPoints ?? []).map((test, index) => {
    const path = ['pedalPoints', index];
    const ids = Object.keys(document.setUps);
    if (!ids.includes(test.setUp)) unknownId(filler, [...path, 'setUp'], 'unknown-set-up', test.setUp, ids);
    return resolveTest(filler, test, path);
  });
}

function resolveTest(
  filler: Filler,
  { points, ...test }: PedalTestDocument,
  path: DocumentPath,
): JobPedalTest {
  const resolved = points.map((point, index) => resolvePoint(filler, point, [...path, 'points', index]));
  const readable = resolved.every(({ force, linePressure }) => (force === null) !== (linePressure === null));
  for (const { code, index, found, accepted } of readable ? pointTroubles(resolved) : []) {
    const place = index === null ? [...path, 'points'] : [...path, 'points', index];
    const message = `${pathText(place)}: ${found}; accepted is ${accepted}`;
    filler.findings.push({ code, path: place, at: 'value', found, accepted, message });
  }
  return { ...test, points: resolved };
}

function resolvePoint(filler: Filler, point: PedalPointDocument, path: DocumentPath): JobPedalPoint {
  const { force, linePressure, travel, plugged = [] } = point;
  if ((force === undefined) === (linePressure === undefined)) oneOfTwo(filler, force === undefined, path);
  const known = (key: 'force' | 'linePressure'): Known | null => {
    const input = point[key];
    return input === undefined ? null : filler.stated(pedalPointFacts[key], input, [...path, key]);
  };
  return {
    force: known('force'),
    linePressure: known('linePressure'),
    travel: filler.stated(pedalPointFacts.travel, travel, [...path, 'travel']),
    plugged,
  };
}

function oneOfTwo(filler: Filler, neither: boolean, path: DocumentPath): void {
  const accepted = 'a force or a linePressure, one of the two';
  const found = neither ? 'neither force nor linePressure' : 'both force and linePressure';
  const message = `${pathText(path)} has ${found}; accepted is ${accepted}`;
  const code = neither ? 'missing' : 'contradiction';
  filler.findings.push({ code, path, at: 'value', found, accepted, message });
}
