/**
 * What keeps wheels from locking. First cut: a stated efficiency; the full stop simulates the cycling and lets the
 * efficiency come out.
 */
export type Antilock = NoAntilock | ThresholdAntilock;

export interface NoAntilock {
  readonly kind: 'none';
  /** True where the control unit limits rear slip (electronic distribution) without full anti-lock. */
  readonly electronicRearLimit: boolean;
}

export interface ThresholdAntilock {
  readonly kind: 'threshold';
  /** Mean used friction over peak friction while it cycles, 1. */
  readonly efficiency: number;
  /** m/s, below this speed it is off. */
  readonly minimumSpeed: number;
  readonly electronicRearLimit: boolean;
}
