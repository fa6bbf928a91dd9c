import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { isTestFile, sourceFiles } from '../architecture/source-files.mjs';

const page = 'docs/errors.md';
/** Codes of a library, not ours: zod's name for a finding of our own, Node's names for a failing system call. */
const notOurs = /^(?:|custom|[A-Z][A-Z0-9_]+)$/;

/** Codes in the source that docs/errors.md doesn't explain, and codes there that the source no longer has. */
export function errorCodeProblems(root, folders) {
  const found = new Map();
  for (const file of folders.flatMap((folder) => sourceFiles(root, folder)))
    if (!isTestFile(file)) for (const [code, line] of codesOf(root, file)) found.set(code, `${file}:${line}`);
  const problems = [];
  const told = new Set();
  const entries = new Set();
  readFileSync(join(root, page), 'utf8')
    .split('\n')
    .forEach((text, index) => {
      const code = /^\|\s*`?([a-z0-9-]+)`?\s*\|/.exec(text)?.[1];
      if (code === undefined || code === 'code' || /^-+$/.test(code)) return;
      const entry = text.split('|').slice(1, 4).join('|').replaceAll(' ', '');
      if (entries.has(entry)) problems.push(`${page}:${index + 1}: ${code} is there twice`);
      entries.add(entry);
      if (!found.has(code)) problems.push(`${page}:${index + 1}: ${code} is in no source file`);
      told.add(code);
    });
  for (const [code, place] of found)
    if (!told.has(code)) problems.push(`${place}: code '${code}' is not in ${page}`);
  return problems;
}

/** String literals that are given or typed as a `code`, and the members of lists, tables and types of codes. */
function codesOf(root, file) {
  const tree = ts.createSourceFile(
    file,
    readFileSync(join(root, file), 'utf8'),
    ts.ScriptTarget.Latest,
    true,
  );
  const codes = new Map();
  const visit = (node) => {
    const value = codeValue(node);
    if (value !== undefined) collect(value);
    ts.forEachChild(node, visit);
  };
  const collect = (node) => {
    if (ts.isStringLiteral(node) && !notOurs.test(node.text))
      codes.set(node.text, tree.getLineAndCharacterOfPosition(node.getStart()).line + 1);
    if (ts.isObjectLiteralExpression(node)) node.properties.forEach((property) => collect(property.name));
    else if (holdsCodes(node)) ts.forEachChild(node, collect);
  };
  visit(tree);
  return codes;
}

function codeValue(node) {
  const named =
    ts.isPropertyAssignment(node) || ts.isPropertySignature(node) || ts.isPropertyDeclaration(node);
  if (named && node.name.getText() === 'code') return node.type ?? node.initializer;
  if (ts.isTypeAliasDeclaration(node) && node.name.text.endsWith('Code')) return node.type;
  const isTable = ts.isVariableDeclaration(node) && /(?:Codes|Problems)$/.test(node.name.getText());
  return isTable ? node.initializer : undefined;
}

function holdsCodes(node) {
  return (
    ts.isUnionTypeNode(node) ||
    ts.isLiteralTypeNode(node) ||
    ts.isArrayLiteralExpression(node) ||
    ts.isAsExpression(node) ||
    ts.isConditionalExpression(node)
  );
}
