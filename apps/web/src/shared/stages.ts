/** The six stages of a job, in order: the same six in the app, the command line and the docs. */
export const stages = [
  { id: 'survey', title: 'Survey', question: 'What is this car, as found?' },
  { id: 'limits', title: 'Limits', question: 'What holds this car back?' },
  { id: 'options', title: 'Options', question: 'What would other parts change?' },
  { id: 'work', title: 'Work', question: 'How is it done?' },
  { id: 'proof', title: 'Proof', question: 'What did the stops show?' },
  { id: 'record', title: 'Record', question: 'What does the owner get?' },
] as const;

export type StageId = (typeof stages)[number]['id'];
