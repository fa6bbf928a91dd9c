import * as braking from '@standstill/braking';
import { describe, expect, it } from 'vitest';
import { libraryPage } from './library-page.mjs';

const page = libraryPage(braking);

describe('the page of the classes', () => {
  it('has every figure with its unit, spread, origin and note, in units that a person thinks in', () => {
    expect(page).toContain('**Grey iron** (`greyIron`).');
    expect(page).toMatch(/^\| squeeze of one pad \| 12 \| ± 4\.2 \| µm\/MPa \| from memory \| .+ \|$/m);
    expect(page).toMatch(/^\| wet boiling point \| 155 \| {2}\| °C \| read \| .+ \|$/m);
    expect(page).toMatch(/^\| growth at 6\.89 MPa \| 0\.446 \| ± 25 % \| cm³\/m \| read \| .+ \|$/m);
    expect(page).toContain('(`road`). Its curve would get the letter F.');
  });

  it('leaves no class of the package out', () => {
    const tables = Object.entries(braking).filter(([name]) => /(?:Classes|Materials)$/.test(name));
    expect(tables.length).toBeGreaterThan(8);
    for (const [, classes] of tables) {
      for (const [id, { title }] of Object.entries(classes as Record<string, { readonly title: string }>))
        expect(page).toContain(`**${title}** (\`${id}\`)`);
    }
  });

  it('refuses a figure whose unit it does not know', () => {
    const odd = { title: 'Odd', gloss: { value: 1, spread: 0, known: 'assumed', note: 'none' } };
    expect(() => libraryPage({ ...braking, pedalClass: odd })).toThrow('pedal.gloss');
  });
});
