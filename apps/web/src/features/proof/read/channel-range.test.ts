import type { LogReport } from '@standstill/workshop';
import { expect, it } from 'vitest';
import { channelRange } from './channel-range.ts';

const channel = (quantity: string, low: number, high: number): LogReport['channels'][number] => ({
  name: 'x',
  quantity,
  unitAsRead: '',
  unitOrigin: 'none',
  chosenBy: 'guess',
  range: { low, high, samples: 9 },
});

it('shows what a channel goes from and to in the unit of the person; as read where nobody knows what it is', () => {
  expect(channelRange(channel('speed', 0, 26.8224), { system: 'us' })).toBe('0 to 60.0 mph');
  expect(channelRange(channel('temperature', 20, 300), { system: 'metric' })).toBe('20 to 300 °C');
  expect(channelRange(channel('unknown', -1.23456789, 4), { system: 'us' })).toBe('−1.2346 to 4');
  expect(channelRange({ ...channel('speed', 0, 1), range: null }, { system: 'us' })).toBe('–');
});
