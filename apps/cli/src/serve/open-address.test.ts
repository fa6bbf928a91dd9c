import { expect, it } from 'vitest';
import { openCommand } from './open-address.ts';

it.each([
  ['darwin', {}, ['open']],
  ['win32', {}, ['cmd', '/c', 'start', '""']],
  ['linux', { DISPLAY: ':0' }, ['xdg-open']],
  ['linux', { WAYLAND_DISPLAY: 'wayland-0' }, ['xdg-open']],
  ['linux', {}, null],
  ['linux', { DISPLAY: ':10', SSH_CONNECTION: '10.0.0.1 1 10.0.0.2 22' }, null],
  ['darwin', { CI: '1' }, null],
])('on %s with %o opens with %o', (platform, environment, command) => {
  expect(openCommand(platform, environment)).toEqual(command);
});
