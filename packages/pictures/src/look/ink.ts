/** One ink of four strengths and one accent; every difference that they show is also one of shape or dash. */
export const ink = {
  strong: '#15181b',
  soft: '#4a5056',
  line: '#74787b',
  faint: '#cfccc1',
  band: '#dde3e4',
  accent: '#00566b',
  paper: '#ffffff',
} as const;
