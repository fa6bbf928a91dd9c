import { Document } from 'yaml';
import type { JobDocument } from './document/job-document.ts';

/**
 * Writes a job document as text that `readJob` reads back alike.
 *
 * @param document - the document
 * @param format - YAML for people, JSON for programs
 * @returns the text, with a line end
 */
export function printJob(document: JobDocument, format: 'yaml' | 'json'): string {
  if (format === 'json') return `${JSON.stringify(document, null, 2)}\n`;
  const yaml = new Document(document, { aliasDuplicateObjects: false });
  return yaml.toString({ lineWidth: 110, flowCollectionPadding: true });
}
