/** The sections of the model that the checks are asked to hold; the first eight must each have a counted row. */
export const sections = {
  0: 'Units',
  1: 'The car',
  2: 'The tire',
  3: 'Foot to line pressure',
  4: 'A corner',
  5: 'The pedal: travel and firmness',
  6: 'The stop',
  7: 'Heat',
  8: 'Balance',
  9: 'Will it go on the car',
  10: 'Fasteners',
  11: 'Stop budget',
  12: 'How sure',
  13: 'Measured stops',
};
const needed = new Set([1, 2, 3, 4, 5, 6, 7, 8]);
/** The physics; before it are units, after it statistics: neither proves a brake. */
const isPhysics = (section) => section >= 1 && section <= 10;

const leastRows = 40;
const leastSources = 15;
const mostOfOneSource = 5;
/** Names for what has no source behind it. */
const noSources = new Set(['common-practice', 'geometry', 'textbook-formula']);

/** Whether a pattern of checks/parts.json (`gillespie 3-03*`) names a row (`gillespie 3-03a`). */
export function names(pattern, rowName) {
  return pattern.endsWith('*') ? rowName.startsWith(pattern.slice(0, -1)) : pattern === rowName;
}

/**
 * Whether a row counts: a number of a real source, read or from memory, that ours agrees with and that the code does not
 * hold itself.
 */
export function counts(row) {
  return (
    row.printed !== undefined &&
    row.basis !== 'X' &&
    row.evidence !== 'transcription' &&
    row.expectedDifference === undefined &&
    !noSources.has(row.source)
  );
}

/**
 * Counts the evidence: by source, with no more than five of one, and by section of the model.
 *
 * @param rows - all rows of the checks
 * @param parts - checks/parts.json
 */
export function account(rows, parts) {
  const counted = rows.filter(counts).map((row) => ({ row, sections: sectionsOf(row, parts) }));
  const physics = counted.filter((one) => one.sections.some(isPhysics));
  const bySource = new Map();
  for (const { row } of physics) bySource.set(row.source, (bySource.get(row.source) ?? 0) + 1);
  const sources = [...bySource]
    .toSorted(([a], [b]) => (a < b ? -1 : 1))
    .map(([source, found]) => ({ source, found, counted: Math.min(found, mostOfOneSource) }));
  return {
    total: sources.reduce((sum, one) => sum + one.counted, 0),
    sources,
    sections: Object.keys(sections).map((section) => inSection(counted, Number(section))),
    homeless: counted.filter((one) => one.sections.length === 0).map(({ row }) => `${row.source} ${row.id}`),
  };
}

function sectionsOf({ source, id }, parts) {
  const found = parts.filter(({ rows }) => rows.some((pattern) => names(pattern, `${source} ${id}`)));
  return [...new Set(found.map(({ section }) => section))];
}

function inSection(counted, section) {
  const rows = counted.filter((one) => one.sections.includes(section)).map(({ row }) => row);
  return {
    section,
    rows: rows.length,
    read: rows.filter(({ basis }) => basis === 'R').length,
    sources: new Set(rows.map(({ source }) => source)).size,
  };
}

/** What is wrong with the evidence as a whole; one line each. */
export function accountProblems({ total, sources, sections: found, homeless }) {
  const problems = homeless.map((name) => `${name}: no part of checks/parts.json names this row`);
  if (total < leastRows)
    problems.push(`checks: ${total} rows count for the physics; at least ${leastRows} are wanted`);
  if (sources.length < leastSources)
    problems.push(
      `checks: ${sources.length} sources count for the physics; at least ${leastSources} are wanted`,
    );
  for (const { section, rows } of found)
    if (needed.has(section) && rows === 0)
      problems.push(`checks: no row counts for section ${section} of the model, ${sections[section]}`);
  return problems;
}

/** The account as lines of Markdown. */
export function accountLines({ total, sources, sections: found }) {
  return [
    `**${total} rows of ${sources.length} sources count for the physics**; ${leastRows} of ${leastSources} are wanted, and one in each of the`,
    `first eight sections. A row counts where its number was read in a source (R) or is from memory of a named one (M), where`,
    'ours agrees with it, and where the code does not hold the figure itself. No source counts more than five times; made-up',
    'cases (X), bands, figures that differ by design and common practice do not count. Units and statistics have rows of their own and',
    'count for no section of the physics.',
    '',
    '| section of the model | rows that count | of these read | sources |',
    '|---|---:|---:|---:|',
    ...found.map(
      (one) => `| ${one.section} ${sections[one.section]} | ${one.rows} | ${one.read} | ${one.sources} |`,
    ),
    '',
    '| source (physics) | rows | counted |',
    '|---|---:|---:|',
    ...sources.map((one) => `| ${one.source} | ${one.found} | ${one.counted} |`),
  ];
}
