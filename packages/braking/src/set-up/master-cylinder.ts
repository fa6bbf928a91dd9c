/** What turns rod force into line pressure. */
export type MasterCylinder = TandemCylinder | BalanceBarCylinders;

export interface TandemCylinder {
  readonly kind: 'tandem';
  /** D, m. */
  readonly bore: number;
  /** m, full stroke of both pistons together. */
  readonly stroke: number;
  /** η, 1. */
  readonly efficiency: number;
}

export interface BalanceBarCylinders {
  readonly kind: 'balance-bar';
  /** m. */
  readonly frontBore: number;
  /** m. */
  readonly rearBore: number;
  /** Share of the rod force on the front cylinder, 1. */
  readonly frontForceShare: number;
  /** m, stroke of each cylinder. */
  readonly stroke: number;
  /** η, 1. */
  readonly efficiency: number;
}
