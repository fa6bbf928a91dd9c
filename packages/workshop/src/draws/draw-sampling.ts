/**
 * How draws are spread over the uncertain numbers: a Latin hypercube fills each number evenly by itself; a Sobol sequence
 * fills pairs and triples evenly as well, best with a power of two of draws, and numbers beyond its dimensions by a
 * Latin hypercube.
 */
export type DrawSampling = 'latin-hypercube' | 'sobol';
