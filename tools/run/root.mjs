import { fileURLToPath } from 'node:url';

/** Folder of the repository, with no slash at its end. */
export const root = fileURLToPath(new URL('../..', import.meta.url)).replace(/[\\/]$/, '');
