import type { LogSummary } from '@standstill/workshop';
import { requestJson, requestOk } from './request.ts';

/** The log files kept with a job. */
export function listLogs(jobId: string, signal?: AbortSignal): Promise<readonly LogSummary[]> {
  return requestJson<{ logs: readonly LogSummary[] }>(
    `/jobs/${encodeURIComponent(jobId)}/logs`,
    signal ? { signal } : {},
  ).then((answer) => answer.logs);
}

/** Keeps a log file byte for byte; the same bytes a second time give the same log back. */
export function keepLog(jobId: string, name: string, bytes: Blob): Promise<LogSummary> {
  return requestJson(`/jobs/${encodeURIComponent(jobId)}/logs?name=${encodeURIComponent(name)}`, {
    method: 'POST',
    headers: { 'content-type': 'application/octet-stream' },
    body: bytes,
  });
}

/** The bytes of a kept log, as they were dropped. */
export async function logBytes(jobId: string, logId: string, signal?: AbortSignal): Promise<Uint8Array> {
  const path = `/jobs/${encodeURIComponent(jobId)}/logs/${encodeURIComponent(logId)}`;
  const response = await requestOk(path, signal ? { signal } : {});
  return new Uint8Array(await response.arrayBuffer());
}
