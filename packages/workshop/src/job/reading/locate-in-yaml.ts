import { isMap, isNode, isScalar, isSeq } from 'yaml';
import type { Document, LineCounter, Node, Pair } from 'yaml';
import type { DocumentPath, Locate, Position } from './position.ts';

/** Finds values of a parsed YAML or JSON text by their path. */
export function locateInYaml(document: Document, lines: LineCounter): Locate {
  return (path, part) => {
    const found = follow(document.contents, path);
    const whole = found.reached === path.length;
    const node = whole && part === 'value' ? (found.node ?? found.key) : (found.key ?? found.node);
    return positionOf(node, lines);
  };
}

interface Found {
  /** How many steps of the path are there. */
  readonly reached: number;
  readonly node: Node | null;
  readonly key: Node | null;
}

function follow(root: unknown, path: DocumentPath): Found {
  let found: Found = { reached: 0, node: isNode(root) ? root : null, key: null };
  for (const step of path) {
    const next = stepInto(found.node, step);
    if (next === null) return found;
    found = { reached: found.reached + 1, ...next };
  }
  return found;
}

function stepInto(node: Node | null, step: string | number): { node: Node | null; key: Node | null } | null {
  if (isSeq(node)) {
    const item = typeof step === 'number' ? node.items[step] : undefined;
    return isNode(item) ? { node: item, key: item } : null;
  }
  if (!isMap(node)) return null;
  const pair: Pair | undefined = node.items.find((item) => keyText(item.key) === String(step));
  if (pair === undefined) return null;
  return { node: isNode(pair.value) ? pair.value : null, key: isNode(pair.key) ? pair.key : null };
}

function keyText(key: unknown): string {
  return String(isScalar(key) ? key.value : key);
}

function positionOf(node: Node | null, lines: LineCounter): Position {
  const offset = node?.range?.[0] ?? 0;
  const { line, col } = lines.linePos(offset);
  return { line: Math.max(line, 1), column: Math.max(col, 1) };
}
