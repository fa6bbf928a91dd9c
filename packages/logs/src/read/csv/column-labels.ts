import type { IssueList } from '../../channels/issue-list.ts';
import type { CsvDialect } from './csv-dialect.ts';

/** Characters; no heading is longer, and sentences quote them. */
const longestHeading = 200;

/**
 * One heading for every column: missing ones are numbered, double ones get a number behind.
 *
 * @param dialect - the file's headings and width
 * @param headingLine - line of the headings, for the issues
 * @param issues - where missing and double headings are reported
 * @returns as many labels as a row has fields
 */
export function columnLabels(dialect: CsvDialect, headingLine: number, issues: IssueList): readonly string[] {
  const { header, width } = dialect;
  if (header.length === 0)
    issues.add('no-headings', null, () => 'The file has no row of headings; its columns are numbered.');
  else if (header.length !== width)
    issues.add(
      'heading-count',
      headingLine,
      () => `There are ${header.length} headings over rows of ${width} fields.`,
    );
  const seen = new Map<string, number>();
  return Array.from({ length: width }, (_, index) => {
    const heading = (header[index] ?? '')
      .replace(/Â(?=[°²³µ·])/g, '')
      .replace(/\s+/g, ' ')
      .trim()
      .slice(0, longestHeading);
    if (heading === '') return `column ${index + 1}`;
    const count = (seen.get(heading) ?? 0) + 1;
    seen.set(heading, count);
    if (count === 1) return heading;
    issues.add(
      'double-heading',
      headingLine,
      () => `Two columns are called '${heading}'; the later one is read as '${heading} (${count})'.`,
      heading,
    );
    return `${heading} (${count})`;
  });
}
