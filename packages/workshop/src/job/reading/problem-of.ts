import type { Problem } from '../../results/problem.ts';
import type { Finding } from './finding.ts';
import { pathText } from './path-text.ts';
import type { Position } from './position.ts';

/**
 * A finding with its place, in one line whatever was in the file.
 *
 * @param finding - the mistake
 * @param file - name of the file; null where there is none
 * @param position - its place there
 * @returns the problem; control characters that the file had are written as escapes
 */
export function problemOf(finding: Finding, file: string | null, position: Position): Problem {
  return {
    code: finding.code,
    file,
    line: position.line,
    column: position.column,
    path: visible(pathText(finding.path)),
    found: visible(finding.found),
    accepted: visible(finding.accepted),
    message: visible(finding.message),
  };
}

function visible(text: string): string {
  return text.replace(/[\u0000-\u001f\u007f-\u009f\u2028-\u202e\u2066-\u2069]/g, (sign) => {
    const escaped = JSON.stringify(sign).slice(1, -1);
    return escaped === sign ? `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}` : escaped;
  });
}
