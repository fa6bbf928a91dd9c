/** Interface temperatures at which the pads' friction is read. */
export interface PadTemperatures {
  /** °C. */
  readonly front: number;
  /** °C. */
  readonly rear: number;
}

/** Bedded brakes at the warm end of a cold test: 100 °C at both axles. */
export const usualPadTemperatures: PadTemperatures = { front: 100, rear: 100 };
