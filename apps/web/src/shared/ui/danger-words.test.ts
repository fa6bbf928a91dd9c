import type { Warning } from '@standstill/workshop';
import { describe, expect, it } from 'vitest';
import { dangersFirst, dangerWords } from './danger-words.ts';

const warning = (about: string, code: string, severity: Warning['severity'] = 'danger'): Warning => ({
  about,
  code,
  severity,
  message: '',
});

describe('dangers', () => {
  const warnings = [
    warning('kit', 'rear-locks-first'),
    warning('kit', 'rear-locks-first'),
    warning('kit', 'pedal-long', 'caution'),
    warning('other', 'a-danger-of-tomorrow'),
  ];

  it('names each danger of a set-up once, and nothing less grave', () => {
    expect(dangerWords(warnings, 'kit')).toEqual(['rear locks first']);
    expect(dangerWords(warnings, 'found')).toEqual([]);
  });

  it('never keeps quiet about a danger that has no short name', () => {
    expect(dangerWords(warnings, 'other')).toEqual(['see above']);
  });

  it('puts the dangerous set-ups first and keeps the order otherwise', () => {
    const ids = dangersFirst([{ id: 'found' }, { id: 'kit' }, { id: 'valve' }, { id: 'other' }], warnings);
    expect(ids.map(({ id }) => id)).toEqual(['kit', 'other', 'found', 'valve']);
  });
});
