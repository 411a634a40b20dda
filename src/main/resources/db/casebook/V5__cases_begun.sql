-- Every case that was ever begun here, written together with its line in case_file and never taken
-- out: a case that another program takes away whole leaves its line in this list. uid is '' as long
-- as it is there.

create table case_begun (
  id        varchar(40) not null primary key,
  uid       varchar(36) not null,
  site_id   text        not null,
  opened_at varchar(30) not null
);

insert into case_begun (id, uid, site_id, opened_at)
  select id, uid, site_id, opened_at from case_file;
