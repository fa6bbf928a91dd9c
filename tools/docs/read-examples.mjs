import { exportedFunctions } from './exported-functions.mjs';

/** Every `expression // => value` of the docstrings of a package. */
export function readExamples(root, folder) {
  return exportedFunctions(root, folder)
    .filter(({ isPublic, doc }) => isPublic && doc !== undefined)
    .flatMap(({ file, line, name, doc }) =>
      doc.examples
        .filter((text) => text.includes('// =>'))
        .map((text) => {
          const [expression, expected] = text.split('// =>');
          return {
            file,
            line,
            name,
            expression: expression.trim().replace(/;$/, ''),
            expected: expected.trim(),
          };
        }),
    );
}
