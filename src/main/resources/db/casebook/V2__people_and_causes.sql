-- A case has a number in its casebook, and a name of its own that it keeps when it is carried to
-- another casebook; '' in cases from before, until they are first carried.
-- The cause is the one believed most when the case was last written to; '' if nothing was told yet.

alter table case_file add column uid varchar(36) not null default '';
alter table case_file add column cause text not null default '';

create unique index case_file_uid on case_file (uid) where uid <> '';
create index case_file_site on case_file (site_id);

-- What is known of people stands here and nowhere else, so that it can be forgotten.
create table case_person (
  case_id varchar(20) not null references case_file (id),
  part    varchar(20) not null,
  name    text        not null,
  phone   text        not null,
  primary key (case_id, part)
);
