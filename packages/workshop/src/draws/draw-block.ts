/** Draws that one Latin hypercube spans at most. */
const longestBlock = 1000;

/** Draws that are spread evenly over every uncertain number together: one Latin hypercube. */
export interface DrawBlock {
  /** 0 for the first. */
  readonly number: number;
  /** First draw in it. */
  readonly from: number;
  /** First draw after it. */
  readonly to: number;
}

/**
 * Answers which block a draw belongs to. Many draws are several Latin hypercubes one after the other, nearly equal in
 * length: so the room that the drawn values take does not grow with their number, and each block can be drawn by itself.
 *
 * @param draws - how many draws there are in all
 * @param row - the draw, from 0
 * @returns its block; up to 1000 draws there is only one
 */
export function drawBlock(draws: number, row: number): DrawBlock {
  const blocks = Math.ceil(draws / longestBlock);
  const number = Math.floor(((row + 1) * blocks - 1) / draws);
  const edge = (block: number): number => Math.floor((block * draws) / blocks);
  return { number, from: edge(number), to: edge(number + 1) };
}
