/** Bytes without a pattern, the same on every run. */
export function noise(count: number): Uint8Array {
  let state = 1;
  return Uint8Array.from({ length: count }, () => {
    state = (Math.imul(state, 1_103_515_245) + 12_345) >>> 0;
    return state >>> 24;
  });
}
