import { existsSync } from 'node:fs';
import { join } from 'node:path';
import fastifyStatic from '@fastify/static';
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { App } from '../app.ts';
import { RequestRefusal } from '../problems/request-refusal.ts';
import { cachePolicy } from './cache-policy.ts';

/** Serves the built app; every address that is no file and not the API's opens it, since it has its own routes. */
export function webAppRoutes(app: App, webFolder: string): void {
  const isBuilt = existsSync(join(webFolder, 'index.html'));
  if (isBuilt) serveFiles(app, webFolder);
  app.setNotFoundHandler((request, reply) => {
    if (!isForThePage(request))
      throw new RequestRefusal('route-not-found', `There is no ${request.method} ${pathOf(request)}.`);
    if (!isBuilt)
      throw new RequestRefusal('app-not-built', 'Run npm run build, then start the server again.');
    return sendPage(reply);
  });
}

function serveFiles(app: App, webFolder: string): void {
  void app.register(fastifyStatic, {
    root: webFolder,
    preCompressed: true,
    cacheControl: false,
    dotfiles: 'ignore',
    setHeaders: (reply, path) => {
      reply.setHeader('cache-control', cachePolicy(path));
    },
  });
}

function sendPage(reply: FastifyReply): FastifyReply {
  return reply.sendFile('index.html');
}

function isForThePage(request: FastifyRequest): boolean {
  const path = pathOf(request);
  const reads = request.method === 'GET' || request.method === 'HEAD';
  const isApi = path === '/api' || path.startsWith('/api/') || path.startsWith('/problems/');
  return reads && !isApi && !/\.[a-z0-9]+$/i.test(path);
}

function pathOf(request: FastifyRequest): string {
  return request.url.split('?')[0] ?? '';
}
