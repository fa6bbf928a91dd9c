import { nearestWord } from '../reading/nearest-word.ts';
import { pathText } from '../reading/path-text.ts';
import type { DocumentPath } from '../reading/position.ts';
import { shown } from '../reading/shown.ts';
import type { Filler } from './filler.ts';

/** A name that nothing answers to, with the nearest that something does. */
export function unknownId(
  filler: Filler,
  path: DocumentPath,
  code: 'unknown-set-up',
  id: string,
  known: readonly string[],
): void {
  const near = nearestWord(id, known);
  const hint = near === null ? `there: ${known.join(', ') || 'none'}` : `did you mean "${near}"?`;
  const message = `${pathText(path)} names ${shown(id)}, a set-up that is not under setUps; ${hint}`;
  filler.findings.push({
    code,
    path,
    at: 'value',
    found: shown(id),
    accepted: near ?? (known.join(', ') || 'one that is there'),
    message,
  });
}
