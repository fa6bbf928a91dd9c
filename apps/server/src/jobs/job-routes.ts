import { jobDocumentSchema } from '@standstill/workshop';
import { z } from 'zod';
import type { App } from '../app.ts';
import { problemAnswers } from '../problems/problem-answers.ts';
import { RequestRefusal } from '../problems/request-refusal.ts';
import type { ServerContext } from '../server-context.ts';
import { acceptYaml, bodyToReader } from './document-body.ts';
import { entityTag, isAlreadyKnown, versionFromIfMatch } from './entity-tag.ts';
import { findJob, jobNotFound } from './find-job.ts';
import {
  changeHeaders,
  documentTypes,
  jobParams,
  jobSummary,
  lookHeaders,
  storedJob,
} from './job-schemas.ts';
import { readDocument } from './read-document.ts';

/** Jobs: list, make, read, change, look back. */
export function jobRoutes(app: App, context: ServerContext): void {
  acceptYaml(app);
  listJobs(app, context);
  makeJob(app, context);
  readJob(app, context);
  changeJob(app, context);
  lookBack(app, context);
}

function listJobs(app: App, { store }: ServerContext): void {
  const schema = {
    operationId: 'listJobs',
    summary: 'All jobs, newest change first',
    response: { 200: z.object({ jobs: z.array(jobSummary) }), ...problemAnswers },
  };
  app.get('/api/jobs', { schema }, async () => ({ jobs: [...(await store.listJobs())] }));
}

function makeJob(app: App, { store, ids, clock }: ServerContext): void {
  const schema = {
    operationId: 'createJob',
    summary: 'Keeps a new job; the server gives it its id',
    consumes: documentTypes,
    body: jobDocumentSchema,
    response: { 201: storedJob, ...problemAnswers },
  };
  app.post('/api/jobs', { schema, validatorCompiler: bodyToReader }, async (request, reply) => {
    const { document, title } = readDocument(request.body);
    const made = await store.createJob({ id: ids(), title, document, at: clock().toISOString() });
    if (made.kind === 'exists') throw new RequestRefusal('job-exists', 'Send the request again.');
    const { id, version } = made.job;
    return reply
      .code(201)
      .header('location', `/api/jobs/${id}`)
      .header('etag', entityTag(version))
      .send(made.job);
  });
}

function readJob(app: App, { store }: ServerContext): void {
  const schema = {
    operationId: 'getJob',
    summary: 'A job with its document and its version as ETag',
    headers: lookHeaders,
    params: jobParams,
    response: { 200: storedJob, 304: z.undefined().describe('You have what stands.'), ...problemAnswers },
  };
  app.get('/api/jobs/:id', { schema }, async (request, reply) => {
    const job = await findJob(store, request.params.id);
    const tag = entityTag(job.version);
    void reply.header('etag', tag);
    if (isAlreadyKnown(request.headers['if-none-match'], tag)) return reply.code(304).send();
    return reply.send(job);
  });
}

function changeJob(app: App, { store, clock }: ServerContext): void {
  const schema = {
    operationId: 'replaceJob',
    summary: 'Replaces the document where If-Match names the version that stands',
    consumes: documentTypes,
    headers: changeHeaders,
    params: jobParams,
    body: jobDocumentSchema,
    response: { 200: storedJob, ...problemAnswers },
  };
  app.put('/api/jobs/:id', { schema, validatorCompiler: bodyToReader }, async (request, reply) => {
    const { id } = request.params;
    const expected = versionFromIfMatch(request.headers['if-match']);
    const { document, title } = readDocument(request.body);
    const end = await store.replaceJob(id, expected, document, title, clock().toISOString());
    if (end.kind === 'missing') throw jobNotFound(id);
    const etag = entityTag(end.job.version);
    if (end.kind === 'replaced') return reply.header('etag', etag).send(end.job);
    const detail = `You changed version ${expected}; version ${end.job.version} stands. Nothing was overwritten.`;
    throw new RequestRefusal('version-changed', detail, { current: end.job, headers: { etag } });
  });
}

function lookBack(app: App, { store }: ServerContext): void {
  const schema = {
    operationId: 'listJobVersions',
    summary: 'Every version ever kept, oldest first',
    params: jobParams,
    response: { 200: z.object({ versions: z.array(storedJob) }), ...problemAnswers },
  };
  app.get('/api/jobs/:id/versions', { schema }, async (request) => {
    const versions = await store.listJobVersions(request.params.id);
    if (versions.length === 0) throw jobNotFound(request.params.id);
    return { versions: [...versions] };
  });
}
