import { z } from 'zod';
import { questionOption } from './question-option.ts';

const { speed_m_s, pedalForce_N, draws, seed, sampling, setUps, units } = questionOption;

/** How to predict the stop that a job asks about. */
export const stopOptions = z.strictObject({ speed_m_s, pedalForce_N, draws, seed, sampling, setUps, units });
