// The docs check: docstrings with units, source keys, links, dependencies, error codes and the table of rooms in step.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { dependencyPageProblems } from './docs/dependency-page-problems.mjs';
import { docstringProblems } from './docs/docstring-problems.mjs';
import { errorCodeProblems } from './docs/error-code-problems.mjs';
import { linkProblems } from './docs/link-problems.mjs';
import { recordProblems } from './docs/record-problems.mjs';
import { roomTableProblems } from './docs/room-table-problems.mjs';
import { sourceKeyProblems } from './docs/source-key-problems.mjs';
import { truthProblems } from './docs/truth-problems.mjs';
import { root } from './run/root.mjs';

const { rooms } = JSON.parse(readFileSync(join(root, 'tools/rooms.json'), 'utf8'));
const folders = rooms.map((room) => room.folder);
const problems = [
  ...rooms.filter((room) => room.pure).flatMap((room) => docstringProblems(root, room.folder)),
  ...recordProblems(root, 'packages/braking'),
  ...sourceKeyProblems(root, folders),
  ...errorCodeProblems(
    root,
    folders.filter((folder) => folder !== 'checks').map((folder) => `${folder}/src`),
  ),
  ...dependencyPageProblems(root),
  ...roomTableProblems(root),
  ...linkProblems(root),
  ...truthProblems(root),
];
for (const line of problems) console.error(line);
process.exitCode = problems.length > 0 ? 1 : 0;
