import { z } from 'zod';
import type { App } from '../app.ts';
import { isAlreadyKnown } from '../jobs/entity-tag.ts';
import { findJob } from '../jobs/find-job.ts';
import { jobParams, lookHeaders } from '../jobs/job-schemas.ts';
import { problemAnswers } from '../problems/problem-answers.ts';
import { answerOrPicture, pictureBody, wantsPicture } from '../proof/picture-request.ts';
import type { ServerContext } from '../server-context.ts';
import { contentDisposition } from './content-disposition.ts';
import { findLog } from './find-log.ts';
import { logParams, logReading, logSummary, reportQuery } from './log-schemas.ts';
import { reportOptions } from './report-options.ts';
import { uploadRoute } from './upload-route.ts';

/** Logs of a job: keep, list, give back, report. */
export function logRoutes(app: App, context: ServerContext): void {
  uploadRoute(app, context);
  listLogs(app, context);
  giveBack(app, context);
  report(app, context);
}

function listLogs(app: App, { store }: ServerContext): void {
  const schema = {
    operationId: 'listLogs',
    summary: 'The logs kept with a job, in the order they came',
    params: jobParams,
    response: { 200: z.object({ logs: z.array(logSummary) }), ...problemAnswers },
  };
  app.get('/api/jobs/:id/logs', { schema }, async (request) => {
    const { id } = request.params;
    const logs = await store.listLogs(id);
    if (logs.length === 0) await findJob(store, id);
    return { logs: [...logs] };
  });
}

function giveBack(app: App, { store }: ServerContext): void {
  const original = {
    description: 'The bytes as they came in.',
    content: { 'application/octet-stream': { schema: z.any() } },
  };
  const schema = {
    operationId: 'getLog',
    summary: 'The bytes of a log, as they came in',
    headers: lookHeaders,
    params: logParams,
    response: { 200: original, 304: z.undefined().describe('You have it.'), ...problemAnswers },
  };
  app.get('/api/jobs/:id/logs/:logId', { schema }, async (request, reply) => {
    const { id, logId } = request.params;
    const { log, bytes } = await findLog(store, id, logId);
    const tag = `"${log.sha256}"`;
    void reply.header('etag', tag).header('content-disposition', contentDisposition(log.name));
    void reply.header('repr-digest', `sha-256=:${Buffer.from(log.sha256, 'hex').toString('base64')}:`);
    if (isAlreadyKnown(request.headers['if-none-match'], tag)) return reply.code(304).send();
    return reply
      .type('application/octet-stream')
      .send(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength));
  });
}

function report(app: App, { store, calculations }: ServerContext): void {
  const schema = {
    operationId: 'getLogReport',
    summary: 'What is in a log, or in one sentence why it can not be read; its stops as a picture',
    description: 'The log is read as its job says (speed, columns, judgements); the query overrules it.',
    params: logParams,
    querystring: reportQuery,
    response: { 200: answerOrPicture(logReading), ...problemAnswers },
  };
  app.get('/api/jobs/:id/logs/:logId/report', { schema }, async (request, reply) => {
    const { id, logId } = request.params;
    const { log, bytes } = await findLog(store, id, logId);
    const { document } = await findJob(store, id);
    const { query } = request;
    const task = {
      file: { name: log.name, content: bytes },
      options: reportOptions(query),
      of: { document, id: logId },
    };
    void reply.header('vary', 'accept');
    if (!wantsPicture(request, query)) return reply.send(await calculations.reportLog(task));
    const stop = query.stop === undefined ? {} : { stop: query.stop };
    const { picture, sentence } = await calculations.drawStops({ ...task, ...stop });
    const { type, body } = pictureBody(picture, sentence);
    return reply.type(type).send(body);
  });
}
