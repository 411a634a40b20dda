-- The seal of an event is a hash of its text and of the seal before it (see Seals), so that a change
-- behind this program's back shows; the case has the seal of its last event. Events up to
-- sealed_after were sealed at sealed_at and not when they were written.
-- What was written last has the highest number in "written", whatever the clocks said.

alter table case_event add column seal varchar(64) not null default '';
alter table case_file add column seal varchar(64) not null default '';
alter table case_file add column sealed_after bigint not null default 0;
alter table case_file add column sealed_at varchar(30) not null default '';
alter table case_file add column written bigint not null default 0;

create index case_file_written on case_file (written);

-- What a repair took out of a case or changed in it, as it stood.
create table set_apart (
  case_id varchar(40) not null,
  at      varchar(30) not null,
  why     text        not null,
  content text        not null
);
