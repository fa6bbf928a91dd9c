import {
  compareRuns,
  newJobDocument,
  predict,
  printFillings,
  readJobDocument,
  reportLog,
} from '@standstill/workshop';
import type { AskKind, Asks, JobRead, Predicted, Request, Response } from './protocol.ts';

type Answers = { readonly [K in AskKind]: (ask: Asks[K]['ask']) => Asks[K]['answer'] };

const answers: Answers = {
  'new-job': ({ title }) => newJobDocument(title),
  'read-job': (ask) => readJob(ask),
  predict: (ask) => predictJob(ask),
  'report-log': ({ name, content, options }) => reportLog({ name, content }, options),
  compare: (ask) => compareRuns(ask),
};

function readJob({ document, units }: Asks['read-job']['ask']): JobRead {
  const reading = readJobDocument(document);
  if (!reading.ok) return reading;
  return { ok: true, job: reading.job, assumed: printFillings(reading.job.fillings, units) };
}

function predictJob({ document, units, setUps }: Asks['predict']['ask']): Predicted {
  const reading = readJobDocument(document);
  if (!reading.ok) return reading;
  return { ok: true, prediction: predict(reading.job, setUps ? { units, setUps } : { units }) };
}

function answer<K extends AskKind>({ kind, ask }: Request<K>): Response<K> {
  try {
    return { ok: true, answer: answers[kind](ask) };
  } catch (reason) {
    return { ok: false, message: reason instanceof Error ? reason.message : String(reason) };
  }
}

self.addEventListener('message', (event: MessageEvent<Request>) => {
  self.postMessage(answer(event.data));
});
