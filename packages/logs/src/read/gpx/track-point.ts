/** One point of a track, as text and numbers of its file. */
export interface TrackPoint {
  /** As written; '' where absent. */
  readonly time: string;
  /** Degrees; NaN where absent or impossible. */
  readonly latitude: number;
  readonly longitude: number;
  readonly elevation: number;
  /** As written by the standard's own element. */
  readonly speed: number;
  /** As written in an extension. */
  readonly extendedSpeed: number;
  readonly course: number;
  readonly satellites: number;
  readonly dilution: number;
  /** Number of the track segment that it is in, from 0. */
  readonly segment: number;
  /** Line of its end in the file, 1-based. */
  readonly line: number;
}
