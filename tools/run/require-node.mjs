/** Ends with one line where Node is older than the packages accept. Uses nothing that an old Node lacks. */
export function requireNode() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major > 20 || (major === 20 && minor >= 19)) return;
  console.error(`Standstill needs Node 20.19 or later; this is ${process.versions.node}.`);
  process.exit(2);
}
