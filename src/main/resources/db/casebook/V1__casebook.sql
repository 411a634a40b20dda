-- Plain SQL that SQLite and PostgreSQL both take.
-- Times are text in UTC with nine decimals ('2026-11-25T09:30:00.000000000Z'), so that they sort
-- as they are written and no driver rounds them.

create table case_number (
  year_opened integer not null primary key,
  last_number integer not null
);

create table case_file (
  id            varchar(20) not null primary key,
  site_id       text        not null,
  opened_at     varchar(30) not null,
  last_event_at varchar(30) not null,
  last_seq      bigint      not null,
  state         varchar(10) not null,
  title         text        not null
);

create table case_event (
  case_id    varchar(20) not null references case_file (id),
  seq        bigint      not null,
  at         varchar(30) not null,
  written_by text        not null,
  type       text        not null,
  body       text        not null,
  primary key (case_id, seq)
);

create table site (
  id            text   not null primary key,
  last_revision bigint not null
);

create table site_revision (
  site_id  text        not null references site (id),
  revision bigint      not null,
  name     text        not null,
  body     text        not null,
  saved_at varchar(30) not null,
  primary key (site_id, revision)
);
