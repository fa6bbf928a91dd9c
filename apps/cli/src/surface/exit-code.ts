/** What the number says that a command ends with; the same for every command. */
export const exitCode = {
  /** Done, and the answer is yes where the command asks something. */
  ok: 0,
  /** Done, and the answer is no: a mistake in the job, no stop in the log, sets that can't be compared. */
  no: 1,
  /** The command was not written as it should be. */
  usage: 2,
  /** A file that is needed can't be read, or what is in it can't. */
  unreadable: 3,
  /** A fault of this program. */
  internal: 4,
  /** The machine refused: a file that is already there, a folder that can't be written, a port that is taken. */
  refused: 5,
} as const;

export type ExitCode = (typeof exitCode)[keyof typeof exitCode];
