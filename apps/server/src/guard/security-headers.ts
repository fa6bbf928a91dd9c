import type { FastifyHelmetOptions } from '@fastify/helmet';

/** Everything comes from this server; nothing may frame it. Plain HTTP stays plain HTTP: it only crosses this machine. */
export const securityHeaders: FastifyHelmetOptions = {
  contentSecurityPolicy: {
    useDefaults: false,
    directives: {
      defaultSrc: ["'self'"],
      scriptSrc: ["'self'"],
      styleSrc: ["'self'"],
      imgSrc: ["'self'", 'data:'],
      connectSrc: ["'self'"],
      workerSrc: ["'self'"],
      objectSrc: ["'none'"],
      baseUri: ["'none'"],
      formAction: ["'self'"],
      frameAncestors: ["'none'"],
    },
  },
  strictTransportSecurity: false,
  xFrameOptions: { action: 'deny' },
};
