/** What a person said of the stop that was under way at a moment of the log. */
export interface GivenJudgement {
  /** s, on the log's time base. */
  readonly at: number;
  readonly verdict: 'rejected' | 'restored';
  readonly reason: string;
  readonly by?: string;
  readonly date?: string;
}
