const signals = ['SIGINT', 'SIGTERM'] as const;
/** How long requests that are under way may take to end, ms. */
const patience = 10_000;

/**
 * Ends the program in good order when the system or the person asks for it: what is under way is finished, the
 * database closed. A second signal, or ten seconds, ends it at once.
 *
 * @param stop - closes everything
 * @returns takes the listeners off again
 */
export function onStopSignal(stop: () => Promise<void>): () => void {
  let stopping = false;
  const listener = () => {
    if (stopping) process.exit(1);
    stopping = true;
    setTimeout(() => process.exit(1), patience).unref();
    stop().then(
      () => process.exit(0),
      () => process.exit(1),
    );
  };
  for (const signal of signals) process.on(signal, listener);
  return () => {
    for (const signal of signals) process.off(signal, listener);
  };
}
