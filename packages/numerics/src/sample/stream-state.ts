/**
 * Turns a seed and a key into 128 well-mixed bits, so that near seeds and like keys start far apart.
 *
 * Equation: four 32-bit lanes, each text unit multiplied in and rotated, lanes stirred into each other at the end
 * Valid: not for secrets.
 *
 * @param seed - any finite number; all 64 bits of it count
 * @param key - any text
 * @returns four 32-bit integers, not all zero
 */
export function streamState(seed: number, key: string): readonly [number, number, number, number] {
  const lanes = new Int32Array([0x243f6a88, 0x85a308d3 | 0, 0x13198a2e, 0x03707344]);
  const words = new Int32Array(Float64Array.of(seed + 0).buffer);
  absorb(lanes, words[0]!);
  absorb(lanes, words[1]!);
  for (let i = 0; i < key.length; i += 1) absorb(lanes, key.charCodeAt(i));
  absorb(lanes, key.length);
  for (let round = 0; round < 4; round += 1) absorb(lanes, 0x9e3779b9 + round);
  return [lanes[0]! | 1, lanes[1]!, lanes[2]!, lanes[3]!];
}

function absorb(lanes: Int32Array, word: number): void {
  for (let i = 0; i < 4; i += 1) {
    const neighbor = lanes[(i + 1) & 3]!;
    lanes[i] = mix((lanes[i]! ^ Math.imul(word + i, 0x9e3779b1)) + Math.imul(neighbor, 5));
  }
}

/** A one-to-one scramble of 32 bits: shifts spread each bit down, odd factors spread it up. */
function mix(word: number): number {
  let bits = word | 0;
  bits = Math.imul(bits ^ (bits >>> 16), 0x85ebca6b);
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
  return bits ^ (bits >>> 16);
}
