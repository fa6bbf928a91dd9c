import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';

const forbidden = new Map(
  Object.entries({
    Date: 'the clock is passed in',
    performance: 'the clock is passed in',
    setTimeout: 'the clock is passed in',
    setInterval: 'the clock is passed in',
    queueMicrotask: 'the clock is passed in',
    crypto: 'ids and random numbers are passed in',
    console: 'words are printed at the surface',
    process: 'no Node here',
    Buffer: 'no Node here',
    require: 'no Node here',
    globalThis: 'no way round the types',
    fetch: 'no network here',
    window: 'no browser here',
    document: 'no browser here',
    localStorage: 'no browser here',
    navigator: 'no browser here',
    eval: 'no code from text',
  }),
);

/** Names in a file that a pure room may not touch, with their lines and the reason. */
export function impureNames(root, file) {
  const text = readFileSync(join(root, file), 'utf8');
  const tree = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const declared = declaredNames(tree);
  const found = [];
  const visit = (node) => {
    if (ts.isIdentifier(node) && isReference(node) && !declared.has(node.text)) {
      const reason = node.text === 'Math' ? randomReason(node) : forbidden.get(node.text);
      if (reason !== undefined)
        found.push({
          name: node.text,
          reason,
          line: tree.getLineAndCharacterOfPosition(node.getStart()).line + 1,
        });
    }
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return found;
}

function randomReason(node) {
  const { parent } = node;
  const isRandom = ts.isPropertyAccessExpression(parent) && parent.name.text === 'random';
  return isRandom ? 'random numbers are passed in' : undefined;
}

/** A name that stands for a value or a type, not the name of a property or of a member. */
function isReference(node) {
  const { parent } = node;
  if (ts.isPropertyAccessExpression(parent)) return parent.expression === node;
  if (ts.isQualifiedName(parent)) return parent.left === node;
  const names =
    ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent) || ts.isPropertyDeclaration(parent);
  if (names || ts.isMethodDeclaration(parent) || ts.isMethodSignature(parent)) return parent.name !== node;
  return !ts.isImportSpecifier(parent) && !ts.isExportSpecifier(parent);
}

/** Names that the file binds itself: a parameter called `document` is not the browser's. */
function declaredNames(tree) {
  const names = new Set();
  const visit = (node) => {
    const binds = ts.isParameter(node) || ts.isVariableDeclaration(node) || ts.isBindingElement(node);
    const named =
      binds || ts.isFunctionDeclaration(node) || ts.isImportSpecifier(node) || ts.isImportClause(node);
    if (named && node.name !== undefined && ts.isIdentifier(node.name) && !isAmbient(node))
      names.add(node.name.text);
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return names;
}

/** `declare const console: …` would bring the forbidden thing back. */
function isAmbient(node) {
  const statement = ts.isVariableDeclaration(node) ? node.parent.parent : node;
  return (
    ts.canHaveModifiers(statement) && (ts.getCombinedModifierFlags(node) & ts.ModifierFlags.Ambient) !== 0
  );
}
