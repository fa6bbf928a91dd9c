import { z } from 'zod';

/** Options that several questions have; what is left out is as the job says. */
export const questionOption = {
  speed_m_s: z.number().positive().max(150).exactOptional(),
  pedalForce_N: z.number().positive().max(5000).exactOptional(),
  /** Draws behind the intervals. */
  draws: z.number().int().min(1).max(5000).exactOptional(),
  seed: z.number().int().min(0).max(0xffffffff).exactOptional(),
  /** How the draws are spread. */
  sampling: z.enum(['latin-hypercube', 'sobol']).exactOptional(),
  /** Ids; the first is what the others are set against. */
  setUps: z.array(z.string()).min(1).max(20).exactOptional(),
  units: z.enum(['us', 'metric']).exactOptional(),
};

/** Draws where each is a whole schedule, or a stop simulated wheel by wheel: some 10 to 25 ms for a set-up. */
export const fewDraws = z.number().int().min(1).max(1000).exactOptional();
