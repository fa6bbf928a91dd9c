import fc from 'fast-check';

/**
 * Generated cases are the same in every run, so that a red run can be repeated and a green one means the same next time.
 * `STANDSTILL_LAWS=random npm test` draws new ones.
 */
if (process.env.STANDSTILL_LAWS !== 'random') fc.configureGlobal({ seed: 20_261_125 });
