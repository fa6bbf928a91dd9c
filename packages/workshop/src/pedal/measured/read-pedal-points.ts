import { readQuantity } from '../../job/document/read-quantity.ts';
import type { QuantityTrouble } from '../../job/document/read-quantity.ts';
import { corners } from '../../job/document/pedal-test-schema.ts';
import { pedalPointFacts } from '../../job/facts/pedal-point-facts.ts';
import type { Fact } from '../../job/facts/fact.ts';
import type { JobPedalPoint } from '../../job/job.ts';
import type { Known } from '../../job/known.ts';
import { pointTroubles } from '../../job/resolve/point-troubles.ts';
import type { Problem } from '../../results/problem.ts';
import { pointRows } from './point-rows.ts';
import type { PointRow } from './point-rows.ts';

export type PointsReading =
  | { readonly ok: true; readonly points: readonly JobPedalPoint[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const example = 'a push such as 20 lbf 1.1 in, or 300 psi 1.1 in';

/**
 * Reads measured pushes: a table with a line of headings (`force (lbf), travel (in)`), or pushes with semicolons
 * between them (`20 lbf 1.1 in; 40 lbf 1.6 in`).
 *
 * @param text - the table or the pushes
 * @param file - name of the file; null where the text was typed
 * @returns the pushes, or every mistake in them with its place
 */
export function readPedalPoints(text: string, file: string | null): PointsReading {
  const problems: Problem[] = [];
  const points: JobPedalPoint[] = [];
  const rows = pointRows(text);
  const refuse = (
    code: string,
    row: PointRow | null,
    found: string,
    accepted: string,
    what: string,
  ): void => {
    const place = row === null ? 'the points' : `point ${row.index + 1}`;
    const line = row === null || file === null ? null : row.line;
    problems.push({ code, file, line, column: null, path: '', found, accepted, message: `${place}${what}` });
  };
  for (const row of rows) {
    const point = pointOf(row);
    if ('travel' in point) points.push(point);
    else refuse(point.code, row, point.found, point.accepted, point.message);
  }
  if (problems.length === 0)
    for (const { code, index, found, accepted } of pointTroubles(points)) {
      const row = index === null ? null : (rows[index] ?? null);
      refuse(code, row, found, accepted, `: ${found}; accepted is ${accepted}`);
    }
  return problems.length === 0 ? { ok: true, points } : { ok: false, problems };
}

type Trouble = Pick<QuantityTrouble, 'found' | 'accepted' | 'message'> & { readonly code: string };

function pointOf(row: PointRow): JobPedalPoint | Trouble {
  const plugged = row.plugged.filter(isCorner);
  const strange = row.plugged.find((corner) => !isCorner(corner));
  if (strange !== undefined) {
    const accepted = corners.join(', ');
    return {
      code: 'unknown-choice',
      found: strange,
      accepted,
      message: ` plugs "${strange}"; accepted: ${accepted}`,
    };
  }
  if (row.load === '' || row.travel === '')
    return {
      code: 'missing',
      found: row.text,
      accepted: example,
      message: ` is "${row.text}"; accepted is ${example}`,
    };
  const force = knownOf(row, 'force', row.load);
  const isPressure = 'code' in force && force.code === 'unit-wrong-dimension';
  const load = isPressure ? knownOf(row, 'linePressure', row.load) : force;
  if ('code' in load) return load;
  const travel = knownOf(row, 'travel', row.travel);
  if ('code' in travel) return travel;
  return { force: isPressure ? null : load, linePressure: isPressure ? load : null, travel, plugged };
}

function knownOf(row: PointRow, key: keyof typeof pedalPointFacts, text: string): Known | Trouble {
  const fact: Fact = pedalPointFacts[key];
  const reading = readQuantity(text, fact);
  if (!reading.ok) return { ...reading, message: `: ${fact.title.toLowerCase()} ${reading.message}` };
  const { value } = reading;
  const path = `points[${row.index}].${key}`;
  return { value, origin: 'measured', spread: 0, path, low: fact.low, high: fact.high, fact };
}

function isCorner(word: string): word is (typeof corners)[number] {
  return (corners as readonly string[]).includes(word);
}
