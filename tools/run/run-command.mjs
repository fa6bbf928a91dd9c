import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './root.mjs';

/** Runs a command in the repository, its output on ours; gives its exit code. */
export function runCommand(command, args, options = {}) {
  return new Promise((resolve) => {
    const child = spawn(command, args, { cwd: root, stdio: 'inherit', ...options });
    child.on('error', (error) => {
      console.error(`${command}: ${error.message}`);
      resolve(127);
    });
    child.on('close', (code) => resolve(code ?? 1));
  });
}

/** Runs npm with the Node that runs us, so that a second Node on the path can't build for the wrong one. */
export function runNpm(args) {
  const own = process.env['npm_execpath'];
  if (own !== undefined && existsSync(own)) return runCommand(process.execPath, [own, ...args]);
  return runCommand('npm', args, { shell: process.platform === 'win32' });
}

/** Runs the script of an installed development package, for example `typescript/bin/tsc`. */
export function runTool(script, args, options = {}) {
  return runCommand(process.execPath, [join(root, 'node_modules', script), ...args], options);
}
