import { exportedFunctions } from './exported-functions.mjs';
import { namesUnit } from './names-unit.mjs';

/** What the docstrings of a package leave out: the first sentence, parameters, units, examples that assert nothing. */
export function docstringProblems(root, folder) {
  return exportedFunctions(root, folder).flatMap((found) =>
    problemsOf(found).map((message) => `${found.file}:${found.line}: ${found.name} ${message}`),
  );
}

function problemsOf({ isPublic, parameters, returns, doc }) {
  if (!isPublic) return [];
  if (doc === undefined) return ['has no docstring'];
  const problems = [];
  if (!/^[^\n@]*\S/.test(doc.description) || !/[.:?]/.test(doc.description))
    problems.push('does not begin with a sentence that says what it answers');
  for (const parameter of parameters) problems.push(...parameterProblems(parameter, doc));
  if (doc.returns === undefined ? !/^(?:void|never|asserts .*|)$/.test(returns) : doc.returns.trim() === '')
    problems.push('says nothing after @returns');
  else if (isNumber(returns) && !namesUnit(doc.returns)) problems.push('has @returns without a unit');
  if (doc.hasExample && !doc.examples.some((line) => line.includes('// =>')))
    problems.push('has an @example without a "// =>"');
  return problems;
}

function parameterProblems({ name, names, type }, doc) {
  if (name.startsWith('_')) return [];
  const whole = names.length === 1 && names[0] === name ? doc.parameters.get(name) : undefined;
  if (whole === undefined) return partsProblems(name, names, doc);
  if (whole.trim() === '') return [`says nothing about ${name}`];
  return isNumber(type) && !namesUnit(whole) ? [`has @param ${name} without a unit`] : [];
}

/** A record is told part by part (`@param load.mass`, `@param mass`) or as a whole, under whatever name. */
function partsProblems(name, names, doc) {
  const told = [...doc.parameters.keys()];
  if (names.length === 1 && names[0] === name) {
    return told.some((key) => key.startsWith(`${name}.`)) ? [] : [`has no @param ${name}`];
  }
  const missing = names.filter((part) => !told.some((key) => key === part || key.endsWith(`.${part}`)));
  const asWhole = told.length > 0 && missing.length === names.length;
  return asWhole ? [] : missing.map((part) => `has no @param ${part}`);
}

function isNumber(type) {
  return /^(?:readonly\s+)?(?:number(?:\s*\|\s*null)?|number\[\]|Float64Array|ArrayLike<number>)$/.test(
    type.trim(),
  );
}
