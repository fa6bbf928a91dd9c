import { readFileSync } from 'node:fs';

/** Whom to run a program as that refuses to run as root. */
export interface User {
  readonly uid: number;
  readonly gid: number;
}

/**
 * Answers as whom to start a database server: root is refused by it, so root hands it to a user without rights.
 *
 * @returns the user; null where this process is not root and can start it as itself
 */
export function unprivilegedUser(): User | null {
  if (process.getuid?.() !== 0) return null;
  const users = readFileSync('/etc/passwd', 'utf8').split('\n');
  for (const name of ['postgres', 'nobody']) {
    const [, , uid, gid] = users.find((line) => line.startsWith(`${name}:`))?.split(':') ?? [];
    if (uid !== undefined && gid !== undefined) return { uid: Number(uid), gid: Number(gid) };
  }
  throw new Error(
    'this process is root, and the machine has no user postgres or nobody to run a database as',
  );
}
