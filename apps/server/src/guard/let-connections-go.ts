import type { App } from '../app.ts';

/** When the server is told to stop, ends each connection with the answer under way: a browser would hold it open. */
export function letConnectionsGo(app: App): void {
  let stopping = false;
  app.addHook('preClose', async () => {
    stopping = true;
  });
  app.addHook('onSend', async (_request, reply, payload) => {
    if (stopping) void reply.header('connection', 'close');
    return payload;
  });
}
