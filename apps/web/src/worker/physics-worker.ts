import {
  compareRuns,
  explainStops,
  newJobDocument,
  planTest,
  predict,
  predictionFrom,
  predictionRequest,
  printFillings,
  readJobDocument,
  reportLog,
} from '@standstill/workshop';
import { fadeOfJob } from './fade-of-job.ts';
import type { AskKind, Asks, JobRead, Predicted, PredictionOpened, Request, Response } from './protocol.ts';

type Answers = { readonly [K in AskKind]: (ask: Asks[K]['ask']) => Asks[K]['answer'] };

const answers: Answers = {
  'new-job': ({ title }) => newJobDocument(title),
  'read-job': (ask) => readJob(ask),
  predict: (ask) => predictJob(ask),
  'open-prediction': (ask) => openPrediction(ask),
  'finish-prediction': ({ job, options, drawn }) => predictionFrom(job, options, drawn),
  'report-log': ({ name, content, options }) => reportLog({ name, content }, options),
  compare: (ask) => compareRuns(ask),
  explain: (ask) => explainStops(ask),
  fade: (ask) => fadeOfJob(ask),
  plan: (ask) => planTest(ask),
};

function readJob({ document, units }: Asks['read-job']['ask']): JobRead {
  const reading = readJobDocument(document);
  if (!reading.ok) return reading;
  return { ok: true, job: reading.job, assumed: printFillings(reading.job.fillings, units) };
}

function predictJob(ask: Asks['predict']['ask']): Predicted {
  const opened = openPrediction(ask);
  return opened.ok ? { ok: true, prediction: predict(opened.job, opened.options) } : opened;
}

function openPrediction({ document, units, setUps }: Asks['predict']['ask']): PredictionOpened {
  const reading = readJobDocument(document);
  if (!reading.ok) return reading;
  const { job } = reading;
  const options = setUps ? { units, setUps } : { units };
  return { ok: true, job, options, request: predictionRequest(job, options) };
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
