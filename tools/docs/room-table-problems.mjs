import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** ARCHITECTURE.md shows the table of tools/rooms.json; the two must say the same. */
export function roomTableProblems(root) {
  const { rooms } = JSON.parse(readFileSync(join(root, 'tools/rooms.json'), 'utf8'));
  const lines = readFileSync(join(root, 'ARCHITECTURE.md'), 'utf8').split('\n');
  return rooms.flatMap((room) => {
    const wanted = room.mayImport.length === 0 ? 'nothing of ours' : room.mayImport.join(', ');
    const index = lines.findIndex((line) => line.startsWith('|') && line.split('|')[1]?.trim() === room.name);
    if (index < 0) return [`ARCHITECTURE.md:1: the room ${room.name} is not in the table`];
    const shown = lines[index].split('|')[3]?.trim();
    return shown === wanted
      ? []
      : [`ARCHITECTURE.md:${index + 1}: ${room.name} may import ${wanted}, not ${shown}`];
  });
}
