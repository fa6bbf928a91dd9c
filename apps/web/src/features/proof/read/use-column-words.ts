import { useMutation } from '@tanstack/react-query';
import {
  columnsFor,
  type JobDocument,
  type LogColumnsDocument,
  type LogReport,
  type LogSummary,
} from '@standstill/workshop';
import { logBytes } from '../../../shared/api/logs.ts';
import { useJobPart, useJobSession } from '../../../shared/job/job-context.ts';
import { ask } from '../../../shared/worker/ask.ts';
import {
  rememberColumns,
  rememberedFor,
  withColumn,
  withoutColumn,
  type ColumnWord,
} from './remembered-columns.ts';

const noChannels: LogReport['channels'] = [];

/**
 * Takes a person's word on a column and keeps it in the job, for all logs with the same headings. A word under which the
 * log can not be read is not kept: the sentence that says why is the error.
 */
export function useColumnWords(log: LogSummary, report: LogReport | null) {
  const jobId = useJobPart((state) => state.id);
  const session = useJobSession();
  const document = () => session.read().document as JobDocument;
  const say = useMutation({
    mutationFn: async (word: ColumnWord) => {
      const known = rememberedFor(document().logColumns, report?.headings ?? null);
      const columns = withColumn(known, word, report?.channels ?? noChannels);
      const content = await logBytes(jobId, log.id);
      const read = await ask('report-log', {
        name: log.name,
        content,
        options: { columns: choices(columns) },
      });
      if (read.kind === 'log-refusal') throw new Error(read.sentence);
      const { headings } = read;
      if (headings === null)
        throw new Error('This log has no headings by which its columns could be found again.');
      session.edit((job) => rememberColumns(job as JobDocument, headings, columns));
    },
  });
  const forget = (name: string) => {
    const headings = report?.headings;
    if (headings === null || headings === undefined) return;
    session.edit((job) => {
      const columns = rememberedFor((job as JobDocument).logColumns, headings);
      return rememberColumns(job as JobDocument, headings, withoutColumn(columns, name));
    });
  };
  return { say, forget };
}

/** The words as the reader of logs takes them. */
function choices(columns: LogColumnsDocument['columns']): NonNullable<ReturnType<typeof columnsFor>> {
  return columnsFor({ logColumns: [{ headings: '', columns }] }, '') ?? {};
}
