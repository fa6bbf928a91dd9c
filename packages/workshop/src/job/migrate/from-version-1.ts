import type { DocumentPath } from '../reading/position.ts';
import { isRecord } from '../reading/schema-at.ts';
import type { Migrated } from './migrated.ts';
import { unitInKey } from './unit-in-key.ts';

/**
 * Carries the first draft of the job document to version 2.
 *
 * Version 1 had the set-up as found under `asFound`, one `proposed` set-up beside it, the complaint under
 * `customerComplaint`, and units in key names (`mass_lb: 2450`, `pistons_mm: [54]`).
 *
 * @param value - a version 1 document
 * @returns the version 2 document, not yet checked
 */
export function fromVersion1(value: Readonly<Record<string, unknown>>): Migrated {
  const moves: Move[] = [];
  const lifted = liftUnits(value, [], [], moves) as Record<string, unknown>;
  const { standstill: _version, customerComplaint, asFound, proposed, ...rest } = lifted;
  const setUps: Record<string, unknown> = {};
  if (asFound !== undefined) setUps['as-found'] = titled(asFound, 'As found');
  if (proposed !== undefined) setUps['proposed'] = basedOnAsFound(titled(proposed, 'Proposed'));
  const document = {
    standstill: 2,
    ...(customerComplaint === undefined ? {} : { complaint: customerComplaint }),
    ...rest,
    setUps,
    ...(Array.isArray(rest['runs']) ? { runs: rest['runs'].map(renamedSetUp) } : {}),
  };
  return { value: document, originalPath: (path) => backThrough(moves, backFromSetUps(path)) };
}

interface Move {
  readonly to: DocumentPath;
  readonly from: DocumentPath;
}

/** Moves units out of the keys, noting where each value came from. */
function liftUnits(value: unknown, from: DocumentPath, to: DocumentPath, moves: Move[]): unknown {
  if (Array.isArray(value)) return value.map((item, i) => liftUnits(item, [...from, i], [...to, i], moves));
  if (!isRecord(value)) return value;
  const lifted: Record<string, unknown> = {};
  for (const [key, inner] of Object.entries(value)) {
    const split = unitInKey(key);
    const name = split?.name ?? key;
    if (split !== null) moves.push({ from: [...from, key], to: [...to, name] });
    const moved = liftUnits(inner, [...from, key], [...to, name], moves);
    lifted[name] = split === null ? moved : withUnit(moved, split.unit);
  }
  return lifted;
}

function withUnit(value: unknown, unit: string): unknown {
  if (typeof value === 'number') return `${value} ${unit}`;
  return Array.isArray(value) ? value.map((item) => withUnit(item, unit)) : value;
}

function titled(setUp: unknown, title: string): unknown {
  return isRecord(setUp) ? { title, ...setUp } : setUp;
}

function basedOnAsFound(setUp: unknown): unknown {
  return isRecord(setUp) ? { ...setUp, basedOn: 'as-found' } : setUp;
}

function renamedSetUp(run: unknown): unknown {
  if (!isRecord(run)) return run;
  return run['setUp'] === 'asFound' ? { ...run, setUp: 'as-found' } : run;
}

function backFromSetUps(path: DocumentPath): DocumentPath {
  if (path[0] === 'complaint') return ['customerComplaint', ...path.slice(1)];
  if (path[0] !== 'setUps') return path;
  const [, id, ...rest] = path;
  return id === 'as-found' ? ['asFound', ...rest] : id === 'proposed' ? ['proposed', ...rest] : [];
}

function backThrough(moves: readonly Move[], path: DocumentPath): DocumentPath {
  let back = path;
  for (const { to, from } of moves) {
    if (to.every((step, index) => path[index] === step)) back = [...from, ...back.slice(from.length)];
  }
  return back;
}
