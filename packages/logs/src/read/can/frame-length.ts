/** Bytes that a flexible frame may have above 8. */
const steps = [8, 12, 16, 20, 24, 32, 48, 64];

/**
 * Whether a frame is as long as its description says; a flexible frame is filled up to the next length that it can have.
 *
 * @param length - bytes in the frame
 * @param described - bytes by the description
 * @param isFlexible - whether it is a CAN FD frame
 */
export function hasDescribedLength(length: number, described: number, isFlexible: boolean): boolean {
  if (length === described) return true;
  return isFlexible && described > 8 && length === steps.find((step) => step >= described);
}
