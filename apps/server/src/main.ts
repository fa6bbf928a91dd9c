#!/usr/bin/env node
import { enableCache } from './start/enable-cache.ts';

enableCache();
const { runProgram } = await import('./start/run-program.ts');
process.exitCode = await runProgram(process.argv.slice(2));
