import helmet from '@fastify/helmet';
import fastify from 'fastify';
import type { FastifyServerOptions } from 'fastify';
import { serializerCompiler, validatorCompiler } from 'fastify-type-provider-zod';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import type { Store } from '@standstill/workshop';
import type { App } from './app.ts';
import { calculationsHere } from './calculations/calculations-here.ts';
import type { Calculations } from './calculations/calculations.ts';
import { comparisonRoutes } from './comparisons/comparison-routes.ts';
import { explanationRoutes } from './explanations/explanation-routes.ts';
import { fadeRoutes } from './fades/fade-routes.ts';
import { planRoutes } from './plans/plan-routes.ts';
import { describeApi } from './description/describe-api.ts';
import { allowedHosts } from './guard/allowed-hosts.ts';
import { checkCaller } from './guard/check-caller.ts';
import { farewell } from './guard/farewell.ts';
import { letConnectionsGo } from './guard/let-connections-go.ts';
import { securityHeaders } from './guard/security-headers.ts';
import { healthRoutes } from './health/health-routes.ts';
import { jobRoutes } from './jobs/job-routes.ts';
import { logRoutes } from './logs/log-routes.ts';
import { answerProblem } from './problems/answer-problem.ts';
import { problemRoutes } from './problems/problem-routes.ts';
import { programVersion } from './program-version.ts';
import { questionRoutes } from './questions/question-routes.ts';
import type { ServerContext } from './server-context.ts';
import { answerBrokenRequest } from './problems/answer-broken-request.ts';
import { webAppRoutes } from './web-app/web-app-routes.ts';

/** What a server is made of. */
export interface ServerParts {
  readonly store: Store;
  /** Answers the present time. */
  readonly clock: () => Date;
  /** Answers a new id each time. */
  readonly ids: () => string;
  /** Folder of the built app. */
  readonly webFolder: string;
  /** Where predictions and logs are worked on; in this thread where absent. */
  readonly calculations?: Calculations;
  /** Names that the server answers to; those of this machine's loopback where absent. */
  readonly hosts?: ReadonlySet<string>;
  /** Silent where absent. */
  readonly logger?: FastifyServerOptions['logger'];
}

/** Largest body of a request that is not an upload, bytes. */
const bodyLimit = 2 * 1024 * 1024;
/** Longest that a whole request may take to arrive, ms. */
const requestTimeout = 300_000;

/**
 * Builds the HTTP application; it listens nowhere yet. Does not close the store.
 *
 * @param parts - what it is made of
 * @returns the application
 */
export function createServer(parts: ServerParts): App {
  const { ids, logger = false } = parts;
  const app: App = fastify({
    logger,
    bodyLimit,
    requestTimeout,
    genReqId: () => ids(),
    return503OnClosing: false,
    routerOptions: { maxParamLength: 200 },
    frameworkErrors: answerProblem,
    clientErrorHandler: answerBrokenRequest,
  }).withTypeProvider<ZodTypeProvider>();
  app.setValidatorCompiler(validatorCompiler);
  app.setSerializerCompiler(serializerCompiler);
  app.setErrorHandler(answerProblem);
  guard(app, parts.hosts ?? allowedHosts('127.0.0.1'));
  addRoutes(app, parts);
  return app;
}

const everyRoute = [
  healthRoutes,
  jobRoutes,
  logRoutes,
  questionRoutes,
  comparisonRoutes,
  fadeRoutes,
  planRoutes,
  explanationRoutes,
];

function guard(app: App, hosts: ReadonlySet<string>): void {
  void app.register(helmet, securityHeaders);
  app.addHook('onRequest', async (request, reply) => {
    void reply.header('x-request-id', request.id);
    if (request.url.startsWith('/api/')) void reply.header('cache-control', 'no-cache');
    checkCaller(request, hosts);
  });
  letConnectionsGo(app);
  app.addHook('onSend', async (request, reply, payload) => farewell(request, reply, payload));
}

function addRoutes(app: App, parts: ServerParts): void {
  const { store, clock, ids, calculations = calculationsHere() } = parts;
  const context: ServerContext = { store, clock, ids, calculations, programVersion: programVersion() };
  describeApi(app, context.programVersion);
  void app.register(async (scope: App) => {
    for (const routes of everyRoute) routes(scope, context);
    problemRoutes(scope);
  });
  webAppRoutes(app, parts.webFolder);
  app.addHook('onClose', () => calculations.close());
}
