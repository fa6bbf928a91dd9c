import type { Migration } from './migration.ts';

const sqlite = [
  `create table job (
    id text primary key,
    version integer not null check (version >= 1),
    created_at text not null
  ) strict`,
  `create table job_version (
    job_id text not null references job (id),
    version integer not null,
    title text not null,
    document text not null,
    changed_at text not null,
    primary key (job_id, version)
  ) strict`,
  `create table log (
    id text primary key,
    job_id text not null references job (id),
    name text not null,
    byte_count integer not null,
    sha256 text not null,
    added_at text not null,
    unique (job_id, sha256)
  ) strict`,
  `create table log_piece (
    log_id text not null references log (id),
    position integer not null,
    content blob not null,
    primary key (log_id, position)
  ) strict`,
];

/** Text sorts by code point on both engines (`collate "C"`), whatever the server's language is. */
const postgresql = [
  `create table job (
    id text collate "C" primary key,
    version integer not null check (version >= 1),
    created_at text collate "C" not null
  )`,
  `create table job_version (
    job_id text collate "C" not null references job (id),
    version integer not null,
    title text collate "C" not null,
    document text not null,
    changed_at text collate "C" not null,
    primary key (job_id, version)
  )`,
  `create table log (
    id text collate "C" primary key,
    job_id text collate "C" not null references job (id),
    name text collate "C" not null,
    byte_count integer not null,
    sha256 text collate "C" not null,
    added_at text collate "C" not null,
    unique (job_id, sha256)
  )`,
  `create table log_piece (
    log_id text collate "C" not null references log (id),
    position integer not null,
    content bytea not null,
    primary key (log_id, position)
  )`,
];

/** Jobs with every version of their document, and logs with their bytes. */
export const jobsAndLogs: Migration = {
  number: 1,
  name: 'jobs and logs',
  statements: { sqlite, postgresql },
};
