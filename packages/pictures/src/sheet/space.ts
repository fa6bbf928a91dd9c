import type { Block } from './block.ts';

/** px of nothing. */
export function space(height: number): Block {
  return { height, draw: () => [] };
}
