export type Theme = 'light' | 'dark';

const KEY = 'rimeplan-theme';

/** The theme the user chose last; null when the system decides, or when the browser keeps nothing. */
function loadTheme(): Theme | null {
  try {
    const kept = localStorage.getItem(KEY);
    return kept === 'light' || kept === 'dark' ? kept : null;
  } catch {
    return null;
  }
}

/** Puts the page into the theme chosen last, if any; returns the one it is in. */
export function startTheme(): Theme {
  const kept = loadTheme();
  if (kept) document.documentElement.dataset.theme = kept;
  const chosen = document.documentElement.dataset.theme;
  if (chosen === 'light' || chosen === 'dark') return chosen;
  return matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light';
}

/** Puts the page into a theme and remembers it where the browser allows. */
export function applyTheme(theme: Theme): void {
  document.documentElement.dataset.theme = theme;
  try {
    localStorage.setItem(KEY, theme);
  } catch {
    // The choice then holds until the page is closed.
  }
}
