const key = 'standstill.page';

/** A name for this tab that survives a reload and no more. `crypto.randomUUID` does not exist on plain http in a LAN. */
export function pageId(): string {
  try {
    const known = sessionStorage.getItem(key);
    if (known) return known;
    const fresh = Math.random().toString(36).slice(2);
    sessionStorage.setItem(key, fresh);
    return fresh;
  } catch {
    return 'page';
  }
}
