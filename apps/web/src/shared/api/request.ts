import { readProblemDocument, type ProblemDocument } from './problem-document.ts';

/** The server was not reached at all: no network, or it is down. Nothing was changed by the request. */
export class ServerDown extends Error {
  constructor() {
    super('The server does not answer.');
    this.name = 'ServerDown';
  }
}

/** The server answered and refused. */
export class ServerRefusal extends Error {
  readonly problem: ProblemDocument;
  constructor(problem: ProblemDocument) {
    super(problem.detail);
    this.name = 'ServerRefusal';
    this.problem = problem;
  }
}

/** One request under /api. A gateway's 502 to 504 counts as a server that is down. */
export async function request(path: string, init: RequestInit = {}): Promise<Response> {
  const response = await fetch(`/api${path}`, init).catch((reason: unknown) => {
    if (reason instanceof DOMException && reason.name === 'AbortError') throw reason;
    throw new ServerDown();
  });
  if (response.status >= 502 && response.status <= 504) throw new ServerDown();
  return response;
}

/** One request whose answer must be a success. */
export async function requestOk(path: string, init: RequestInit = {}): Promise<Response> {
  const response = await request(path, init);
  if (!response.ok) throw new ServerRefusal(await readProblemDocument(response));
  return response;
}

/** One request whose answer must be a success with a JSON body. */
export async function requestJson<T>(path: string, init: RequestInit = {}): Promise<T> {
  return (await (await requestOk(path, init)).json()) as T;
}
