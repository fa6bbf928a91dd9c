import { pathText } from '../reading/path-text.ts';
import type { DocumentPath } from '../reading/position.ts';

/** What a value of the document belongs to: `parts.kit-pad` of `parts.kit-pad.friction[0]`; `car`; `conditions`. */
export function ownerOf(path: DocumentPath): string {
  const deep = path[0] === 'parts' || path[0] === 'setUps' || path[0] === 'runs';
  return pathText(path.slice(0, deep ? 2 : 1));
}
