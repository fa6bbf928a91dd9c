import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';

/** Every module that a file names in an import, an export, a dynamic import or a worker address, with its line. */
export function importsOf(root, file) {
  const text = readFileSync(join(root, file), 'utf8');
  const found = ts.preProcessFile(text, true, true);
  const imports = found.importedFiles.map(({ fileName, pos }) => ({
    name: fileName,
    line: lineAt(text, pos),
  }));
  const types = found.typeReferenceDirectives.map(({ fileName, pos }) => ({
    name: fileName,
    line: lineAt(text, pos),
    directive: true,
  }));
  return [...imports, ...types];
}

function lineAt(text, position) {
  return text.slice(0, position).split('\n').length;
}
