import { createHash } from 'node:crypto';
import type { FastifyRequest } from 'fastify';
import type { LogSummary } from '@standstill/workshop';
import { z } from 'zod';
import type { App } from '../app.ts';
import { bodyToReader } from '../jobs/document-body.ts';
import { findJob, jobNotFound } from '../jobs/find-job.ts';
import { jobParams } from '../jobs/job-schemas.ts';
import { problemAnswers } from '../problems/problem-answers.ts';
import { RequestRefusal } from '../problems/request-refusal.ts';
import type { ServerContext } from '../server-context.ts';
import { collectUpload, refuseAnnounced } from './collect-upload.ts';
import { Gate } from './gate.ts';
import { keptLog, uploadQuery } from './log-schemas.ts';
import { reportOptions } from './report-options.ts';
import { uploadsAtOnce } from './upload-limits.ts';

/** Keeps a log byte for byte, then says what is in it. A log that can't be read is kept all the same. */
export function uploadRoute(app: App, context: ServerContext): void {
  const gate = new Gate(uploadsAtOnce);
  void app.register(async (scope: App) => {
    takeBodiesAsTheyAre(scope);
    const schema = {
      operationId: 'addLog',
      summary: 'Keeps a log byte for byte and reports what is in it',
      description:
        'The body is the file itself, whatever its Content-Type, up to 64 MB. The same bytes are kept once.',
      consumes: ['application/octet-stream', 'text/csv'],
      params: jobParams,
      querystring: uploadQuery,
      body: z.any(),
      response: { 200: keptLog, 201: keptLog, ...problemAnswers },
    };
    scope.post('/api/jobs/:id/logs', { schema, validatorCompiler: bodyToReader }, async (request, reply) => {
      const { id } = request.params;
      await checkBeforeReading(request, context, id);
      const content = await gate.through(() => collectUpload(request.raw));
      const { kind, log } = await keep(context, { jobId: id, name: request.query.name, content });
      const file = { name: log.name, content };
      const { document } = await findJob(context.store, id);
      const of = { document, id: log.id };
      const options = reportOptions(request.query);
      const report = await context.calculations.reportLog({ file, options, of });
      const location = `/api/jobs/${id}/logs/${log.id}`;
      return reply
        .code(kind === 'added' ? 201 : 200)
        .header('location', location)
        .send({ ...log, report });
    });
  });
}

function takeBodiesAsTheyAre(scope: App): void {
  scope.removeAllContentTypeParsers();
  scope.addContentTypeParser('*', (_request, _payload, done) => done(null));
}

async function checkBeforeReading(
  request: FastifyRequest,
  { store }: ServerContext,
  id: string,
): Promise<void> {
  refuseAnnounced(request.raw);
  const type = request.headers['content-type'] ?? '';
  const encoding = request.headers['content-encoding'] ?? 'identity';
  if (/^multipart\//i.test(type))
    throw new RequestRefusal('media-type-unsupported', 'Send the file itself as the body, not a form.');
  if (encoding !== 'identity')
    throw new RequestRefusal('media-type-unsupported', 'Send the file as it is, not compressed.');
  await findJob(store, id);
}

async function keep(
  { store, ids, clock }: ServerContext,
  log: { readonly jobId: string; readonly name: string; readonly content: Uint8Array },
): Promise<{ readonly kind: 'added' | 'already-there'; readonly log: LogSummary }> {
  const sha256 = createHash('sha256').update(log.content).digest('hex');
  const end = await store.addLog({ ...log, id: ids(), sha256, at: clock().toISOString() });
  if (end.kind === 'missing-job') throw jobNotFound(log.jobId);
  return end;
}
