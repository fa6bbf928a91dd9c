export const themes = [
  { id: 'system', title: 'As the device is set' },
  { id: 'light', title: 'Light' },
  { id: 'dark', title: 'Dark' },
] as const;

export type Theme = (typeof themes)[number]['id'];

const key = 'standstill.theme';

export function readTheme(): Theme {
  const chosen = document.documentElement.dataset['theme'];
  return chosen === 'light' || chosen === 'dark' ? chosen : 'system';
}

/** Applies the choice and keeps it; `public/theme.js` applies it before the first paint of the next visit. */
export function setTheme(theme: Theme): void {
  if (theme === 'system') delete document.documentElement.dataset['theme'];
  else document.documentElement.dataset['theme'] = theme;
  try {
    if (theme === 'system') localStorage.removeItem(key);
    else localStorage.setItem(key, theme);
  } catch {
    // Storage is blocked: the choice holds for this visit.
  }
}
