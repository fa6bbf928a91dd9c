export type * from './channels/channel-table.ts';
export type * from './channels/log-issue.ts';
export type * from './stops/found-stop.ts';
