import { spawn } from 'node:child_process';

/** Opens an address in the person's browser where there is a desktop. Never fails and never waits. */
export function openAddress(address: string): void {
  const command = openCommand(process.platform, process.env);
  if (command === null) return;
  const [program, ...words] = command;
  const child = spawn(program, [...words, address], { stdio: 'ignore', detached: true });
  child.on('error', () => {
    // No program to open it with: the address is printed anyway.
  });
  child.unref();
}

/**
 * What opens an address on a platform; null where nobody sits in front of it.
 *
 * @param platform - as Node names it
 * @param environment - the process's environment variables
 * @returns program and first words
 */
export function openCommand(
  platform: string,
  environment: Readonly<Record<string, string | undefined>>,
): readonly [string, ...string[]] | null {
  const set = (name: string): boolean => (environment[name] ?? '') !== '';
  if (set('CI') || set('SSH_CONNECTION')) return null;
  if (platform === 'darwin') return ['open'];
  if (platform === 'win32') return ['cmd', '/c', 'start', '""'];
  return set('DISPLAY') || set('WAYLAND_DISPLAY') ? ['xdg-open'] : null;
}
