export type * from './channels/channel-table.ts';
export type * from './channels/log-issue.ts';
export type * from './stops/found-stop.ts';
export * from './read/read-log.ts';
export * from './stops/find-stops.ts';
