import { hostname, networkInterfaces } from 'node:os';

const loopback = ['localhost', '127.0.0.1', '[::1]'];

/**
 * Names under which a server that listens on `host` may be called. A page of another site that makes its own name
 * point here (DNS rebinding) calls by a name that is not among them.
 *
 * @param host - the address that the server listens on
 * @returns host names as they stand in a Host header, without a port
 */
export function allowedHosts(host: string): ReadonlySet<string> {
  if (isLoopback(host)) return new Set(loopback);
  if (host !== '0.0.0.0' && host !== '::') return new Set([...loopback, inHeader(host)]);
  const own = Object.values(networkInterfaces()).flatMap((addresses) => addresses ?? []);
  const machine = hostname().toLowerCase();
  return new Set([...loopback, machine, `${machine}.local`, ...own.map(({ address }) => inHeader(address))]);
}

/**
 * @param host - an address or name to listen on
 * @returns whether only this machine can reach it
 */
export function isLoopback(host: string): boolean {
  return host === 'localhost' || host === '::1' || /^127\.\d+\.\d+\.\d+$/.test(host);
}

function inHeader(address: string): string {
  return address.includes(':') ? `[${address.toLowerCase()}]` : address.toLowerCase();
}
