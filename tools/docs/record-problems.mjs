import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { isTestFile, sourceFiles } from '../architecture/source-files.mjs';
import { namesUnit } from './names-unit.mjs';

/** Numbers in exported records of a package whose unit is told neither at the number nor at the record. */
export function recordProblems(root, folder) {
  return sourceFiles(root, `${folder}/src`)
    .filter((file) => !isTestFile(file) && !file.endsWith('.d.ts'))
    .flatMap((file) => {
      const text = readFileSync(join(root, file), 'utf8');
      const tree = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
      const lineOf = (node) => tree.getLineAndCharacterOfPosition(node.getStart(tree)).line + 1;
      return tree.statements
        .filter((node) => ts.isInterfaceDeclaration(node) && isExported(node))
        .flatMap((record) => {
          if (tellsForAll(commentOf(text, record))) return [];
          return record.members
            .filter((member) => ts.isPropertySignature(member) && isNumber(member, tree))
            .filter((member) => !tellsUnit(member.name.getText(tree), commentOf(text, member)))
            .map(
              (member) =>
                `${file}:${lineOf(member)}: ${record.name.text}.${member.name.getText(tree)} has no unit`,
            );
        });
    });
}

function commentOf(text, node) {
  const ranges = ts.getLeadingCommentRanges(text, node.getFullStart()) ?? [];
  return ranges.map(({ pos, end }) => text.slice(pos, end)).join(' ');
}

/** A record whose numbers are all of one kind says so once: `J, where the energy of a stop went`. */
function tellsForAll(comment) {
  return namesUnit(comment.replace(/^\/\*\*|\*\/$/g, '')) || /\bSI\b/.test(comment);
}

const sayThemselves =
  /_[A-Za-z0-9_]+$|^(?:seed|count|points|layers|nodes|line|column|index)$|(?:Gain|gain|Share|Ratio|Count)$/;

/** `distance_m` carries its unit in its name, a count is one; otherwise the comment has the unit. */
function tellsUnit(name, comment) {
  return sayThemselves.test(name) || namesUnit(comment.replace(/^\/\*\*|\*\/$/g, ''));
}

function isNumber(member, tree) {
  const type = member.type?.getText(tree).trim() ?? '';
  return /^(?:number(?:\s*\|\s*(?:null|undefined))?|readonly number\[\]|Float64Array)$/.test(type);
}

function isExported(node) {
  return (ts.getModifiers(node) ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);
}
