import type { AddressInfo } from 'node:net';
import type { App } from '../app.ts';
import { uploadLimit } from '../logs/upload-limits.ts';
import { StartError } from './start-error.ts';

/**
 * Opens the door.
 *
 * @param app - the application
 * @param host - address to listen on
 * @param port - port to listen on; 0 lets the system choose
 * @returns the address that a browser opens
 * @throws StartError where the port is taken or the address not this machine's
 */
export async function listen(
  app: App,
  { host, port }: { readonly host: string; readonly port: number },
): Promise<string> {
  askBeforeLargeUploads(app);
  try {
    await app.listen({ host, port });
  } catch (error) {
    throw startError(error, host, port);
  }
  const { port: given } = app.server.address() as AddressInfo;
  return `http://${browserHost(host)}:${given}/`;
}

/** A sender that asks before it sends (`Expect: 100-continue`) gets a refusal in place of the go-ahead. */
function askBeforeLargeUploads(app: App): void {
  app.server.on('checkContinue', (request, response) => {
    if (Number(request.headers['content-length'] ?? 0) <= uploadLimit) response.writeContinue();
    app.server.emit('request', request, response);
  });
}

function startError(error: unknown, host: string, port: number): unknown {
  const code = error instanceof Error && 'code' in error ? error.code : '';
  const where = `http://${browserHost(host)}:${port}/`;
  if (code === 'EADDRINUSE')
    return new StartError(
      'port-taken',
      `Port ${port} is taken; perhaps Standstill runs already at ${where}. Choose another with --port.`,
      error,
    );
  if (code === 'EADDRNOTAVAIL' || code === 'ENOTFOUND' || code === 'EACCES')
    return new StartError(
      'address-refused',
      `The system does not let this program listen on ${host}, port ${port}.`,
      error,
    );
  return error;
}

function browserHost(host: string): string {
  if (host === '0.0.0.0' || host === '::') return '127.0.0.1';
  return host.includes(':') ? `[${host}]` : host;
}
