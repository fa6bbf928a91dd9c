/** One data frame of a CAN log. */
export interface CanFrame {
  /** Identifier as a DBC writes it: bit 31 set for an extended one. */
  readonly id: number;
  /** s on the log's clock. */
  readonly clock: number;
  readonly data: Uint8Array;
  /** Whether it is a CAN FD frame, whose lengths go in steps above 8 bytes. */
  readonly isFlexible: boolean;
}

/** What a line of a CAN log is. `other` is a frame without data of a car: remote, error or status. */
export type FrameLine =
  | CanFrame
  | { readonly kind: 'other' }
  | { readonly kind: 'broken' }
  | { readonly kind: 'no-time'; readonly id: number };

/** Bit that marks an extended identifier. */
export const extendedBit = 0x80000000;

/**
 * An identifier as logs write it.
 *
 * @param id - with bit 31 set for an extended one
 * @returns three hexadecimal digits, eight for an extended one
 */
export function idText(id: number): string {
  return id >= extendedBit
    ? (id - extendedBit).toString(16).toUpperCase().padStart(8, '0')
    : id.toString(16).toUpperCase().padStart(3, '0');
}

/**
 * Reads an identifier: up to three digits (four in traces) for a standard one, eight for an extended one.
 *
 * @param text - hexadecimal digits
 * @returns the identifier, bit 31 set for an extended one; NaN where no frame can have it
 */
export function idOf(text: string): number {
  const id = parseInt(text, 16);
  if (text.length === 8) return id <= 0x1fffffff ? id + extendedBit : NaN;
  return id <= 0x7ff ? id : NaN;
}
