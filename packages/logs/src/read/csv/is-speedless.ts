import type { Channel } from '../../channels/channel-table.ts';

/** Whether a channel tells no speed: because it measures something else, or because it holds no value. */
export function isSpeedless({ quantity, values }: Channel): boolean {
  return (quantity !== 'speed' && quantity !== 'wheel-speed') || values.every(Number.isNaN);
}
