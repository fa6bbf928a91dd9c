// The architecture check: who may import whom (tools/rooms.json), what pure rooms may touch, and which packages are named.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { dependencyProblems } from './architecture/dependency-problems.mjs';
import { roomProblems } from './architecture/room-problems.mjs';
import { root } from './run/root.mjs';

const table = JSON.parse(readFileSync(join(root, 'tools/rooms.json'), 'utf8'));
const problems = [...roomProblems(root, table), ...dependencyProblems(root, table)];
for (const line of problems) console.error(line);
process.exitCode = problems.length > 0 ? 1 : 0;
