import { useEffect, useRef, useState } from 'react';
import { readTheme, setTheme, themes, type Theme } from '../shared/theme/theme.ts';
import { UnitSwitches } from '../shared/units/unit-switches.tsx';

/** Units and light or dark: kept for the person on this device, not in the job. */
export function LookDialog({ onClose }: { readonly onClose: () => void }) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog ref={dialog} onClose={onClose} aria-labelledby="look-title" className="stack">
      <h2 id="look-title">Units and look</h2>
      <p className="small soft">For you on this device. Values that you typed stay as you typed them.</p>
      <UnitSwitches />
      <ThemeSwitch />
      <div className="actions">
        <button type="button" className="primary" onClick={() => dialog.current?.close()}>
          Done
        </button>
      </div>
    </dialog>
  );
}

function ThemeSwitch() {
  const [theme, choose] = useState<Theme>(readTheme);
  const pick = (next: Theme) => {
    setTheme(next);
    choose(next);
  };
  return (
    <fieldset>
      <legend>Light or dark</legend>
      {themes.map(({ id, title }) => (
        <label key={id} className="choice">
          <input type="radio" name="theme" checked={theme === id} onChange={() => pick(id)} />
          {title}
        </label>
      ))}
    </fieldset>
  );
}
