import { expect, test } from 'vitest';
import { databaseAddress } from './database-address.ts';

const home = { HOME: '/home/ann' };
const here = '/home/ann/.local/share/standstill';

test.each([
  [
    'what the caller says comes first',
    { databaseUrl: 'postgres://a/b' },
    { ...home, STANDSTILL_DATABASE: '/other' },
    'postgres://a/b',
  ],
  ['a folder too', { dataFolder: './jobs' }, { ...home, STANDSTILL_DATABASE: '/other' }, './jobs'],
  ['then the environment', {}, { ...home, STANDSTILL_DATABASE: '/other' }, '/other'],
  ['an empty variable says nothing', {}, { ...home, STANDSTILL_DATABASE: '' }, here],
  ['then the user’s data folder', {}, home, here],
  ['which may be set', {}, { ...home, XDG_DATA_HOME: '/data' }, '/data/standstill'],
  ['but not to a relative path', {}, { ...home, XDG_DATA_HOME: 'data' }, here],
])('%s', (_, choice, environment, address) => {
  expect(databaseAddress(choice, environment, 'linux')).toBe(address);
});

test('other systems have other folders', () => {
  expect(databaseAddress({}, home, 'darwin')).toBe('/home/ann/Library/Application Support/standstill');
  expect(databaseAddress({}, { LOCALAPPDATA: '/local' }, 'win32')).toBe('/local/standstill');
});
