import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import ts from 'typescript';
import { isTestFile, sourceFiles } from '../architecture/source-files.mjs';

/**
 * Every exported function of a package, with what its docstring says. `isPublic` where the package's index passes it on.
 * @typedef {{ name: string, type: string }} Parameter
 */
export function exportedFunctions(root, folder) {
  const publicNames = namesOfIndex(root, `${folder}/src/index.ts`);
  return sourceFiles(root, `${folder}/src`)
    .filter((file) => !isTestFile(file) && !file.endsWith('.d.ts'))
    .flatMap((file) => functionsOf(root, file, publicNames));
}

function functionsOf(root, file, publicNames) {
  const text = readFileSync(join(root, file), 'utf8');
  const tree = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  return tree.statements.flatMap((statement) => {
    if (!hasExport(statement)) return [];
    if (ts.isFunctionDeclaration(statement))
      return [describe(statement.name?.text ?? 'default', statement, statement)];
    if (!ts.isVariableStatement(statement)) return [];
    return statement.declarationList.declarations
      .filter(({ initializer }) => initializer !== undefined && isFunction(initializer))
      .map((declaration) => describe(declaration.name.getText(tree), declaration.initializer, statement));
  });

  function describe(name, signature, holder) {
    const raw = docComment(text, holder);
    return {
      file,
      name,
      line: tree.getLineAndCharacterOfPosition(holder.getStart(tree)).line + 1,
      isPublic: publicNames.has(`${file} ${name}`) || publicNames.has(`${file} *`),
      parameters: signature.parameters.map((parameter) => ({
        name: parameter.name.getText(tree),
        names: namesIn(parameter),
        type: parameter.type?.getText(tree) ?? '',
      })),
      returns: signature.type?.getText(tree) ?? '',
      doc: raw === undefined ? undefined : parseDoc(raw),
    };
  }

  /** Parameter names, and for a destructured record the names of its parts. */
  function namesIn(parameter) {
    if (!ts.isObjectBindingPattern(parameter.name)) return [parameter.name.getText(tree)];
    return parameter.name.elements.map((element) => (element.propertyName ?? element.name).getText(tree));
  }
}

function docComment(text, node) {
  const ranges = ts.getLeadingCommentRanges(text, node.getFullStart()) ?? [];
  const last = ranges.at(-1);
  const comment = last === undefined ? '' : text.slice(last.pos, last.end);
  return comment.startsWith('/**') ? comment : undefined;
}

/** Splits a docstring into its description, its tags and its example lines. */
export function parseDoc(comment) {
  const lines = comment
    .replace(/^\/\*\*/, '')
    .replace(/\*\/$/, '')
    .split('\n')
    .map((line) => line.replace(/^\s*\* ?/, '').trimEnd());
  const doc = { description: [], parameters: new Map(), returns: undefined, examples: [], hasExample: false };
  let add = (line) => doc.description.push(line);
  for (const line of lines) {
    const tag = /^\s*@(\w+)\s*(.*)$/.exec(line);
    if (tag === null) add(line.trim());
    else add = startTag(doc, tag[1], tag[2]);
  }
  return { ...doc, description: doc.description.join('\n').trim() };
}

function startTag(doc, tag, rest) {
  if (tag === 'param') {
    const match = /^\[?([\w.$]+)\]?\s*(?:-\s*)?(.*)$/.exec(rest);
    const name = match?.[1] ?? '';
    doc.parameters.set(name, match?.[2] ?? '');
    return (line) =>
      doc.parameters.set(
        name,
        isSection(line) ? doc.parameters.get(name) : `${doc.parameters.get(name)} ${line}`.trim(),
      );
  }
  if (tag === 'returns') {
    doc.returns = rest;
    return (line) => (doc.returns = isSection(line) ? doc.returns : `${doc.returns} ${line}`.trim());
  }
  if (tag === 'example') {
    doc.hasExample = true;
    if (rest !== '') doc.examples.push(rest);
    return (line) => line !== '' && doc.examples.push(line);
  }
  return () => {};
}

function isSection(line) {
  return /^(?:Source|Equation|Assumes|Valid):/.test(line);
}

/** 'file name' of everything that an index passes on; 'file *' for a whole file. */
function namesOfIndex(root, index) {
  const names = new Set();
  if (!existsSync(join(root, index))) return names;
  const tree = ts.createSourceFile(
    index,
    readFileSync(join(root, index), 'utf8'),
    ts.ScriptTarget.Latest,
    true,
  );
  for (const statement of tree.statements) {
    if (!ts.isExportDeclaration(statement) || statement.moduleSpecifier === undefined) continue;
    const file = join(dirname(index), statement.moduleSpecifier.text).replaceAll('\\', '/');
    const clause = statement.exportClause;
    if (clause === undefined || ts.isNamespaceExport(clause)) names.add(`${file} *`);
    else
      for (const element of clause.elements)
        names.add(`${file} ${(element.propertyName ?? element.name).text}`);
  }
  return names;
}

function hasExport(statement) {
  const modifiers = ts.canHaveModifiers(statement) ? (ts.getModifiers(statement) ?? []) : [];
  return modifiers.some((modifier) => modifier.kind === ts.SyntaxKind.ExportKeyword);
}

function isFunction(node) {
  return ts.isArrowFunction(node) || ts.isFunctionExpression(node);
}
