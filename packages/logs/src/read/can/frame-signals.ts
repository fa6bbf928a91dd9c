import type { SignalSource } from '../signals/signal-source.ts';
import type { MessageDescription } from './dbc/signal-description.ts';

/**
 * The signals of a message as a log's signals, named 'MESSAGE.SIGNAL'. What each measures is guessed from its own name,
 * else from both.
 *
 * @param message - its description
 * @returns one signal each, in order
 */
export function frameSignals({ name: message, signals }: MessageDescription): readonly SignalSource[] {
  return signals.map(({ name, unit, bits, range }) => ({
    name: `${message}.${name}`,
    guessFrom: [name, `${message.replace(/speeds/gi, 'speed')} ${name}`],
    unit,
    unitOrigin: 'format',
    isSwitch: bits.length === 1,
    ...(range === null ? {} : { range }),
  }));
}
