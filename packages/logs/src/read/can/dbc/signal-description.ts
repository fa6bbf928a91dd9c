/** When a multiplexed signal is in its frame: the switch that tells, and the values with which it is there. */
export interface Presence {
  readonly by: string;
  readonly values: readonly { readonly from: number; readonly to: number }[];
}

/** One signal in a frame, as a DBC describes it. */
export interface SignalDescription {
  readonly name: string;
  /** Positions of its bits, the most significant first: byte × 8 + bit. */
  readonly bits: Uint16Array;
  readonly coding: 'unsigned' | 'signed' | 'float';
  readonly factor: number;
  readonly offset: number;
  /** Least and greatest value by the description; null where it states none. */
  readonly range: { readonly least: number; readonly greatest: number } | null;
  readonly unit: string;
  /** Whether other signals of the frame depend on it. */
  readonly isSwitch: boolean;
  readonly presence: Presence | null;
}

/** One frame, as a DBC describes it. */
export interface MessageDescription {
  /** Bit 31 set for an extended identifier. */
  readonly id: number;
  readonly name: string;
  /** Bytes. */
  readonly length: number;
  readonly signals: readonly SignalDescription[];
}
