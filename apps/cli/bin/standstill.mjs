#!/usr/bin/env node
const [major, minor] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Standstill needs Node 20.19 or later; this is ${process.versions.node}.`);
  process.exit(5);
}
const built = new URL('../dist/main.js', import.meta.url);
const { existsSync } = await import('node:fs');
if (!existsSync(built)) {
  console.error('Standstill is not built yet: run `npm start` or `npm run build` in its folder.');
  process.exit(5);
}
await import(built.href);
