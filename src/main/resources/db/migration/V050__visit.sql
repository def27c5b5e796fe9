-- A visit is a row that never changes and versions of it that are only added; the newest version counts.
-- Planned times are the wall clock of the named zone, so that a new rule of that zone moves the instant, not the plan.
create table visit (
  id uuid not null primary key,
  child uuid not null,
  kind varchar(40) not null,
  purpose varchar(120),
  booked_at timestamp(6) with time zone not null
);
create index visit_child on visit (child);

create table visit_version (
  visit uuid not null references visit (id),
  version bigint not null,
  starts_local timestamp(6) not null,
  zone varchar(60) not null,
  minutes integer not null check (minutes between 5 and 480),
  place varchar(200) not null,
  answer varchar(20) not null,
  wish varchar(500) not null,
  state varchar(20) not null,
  moves integer not null,
  changed_by varchar(80) not null,
  changed_at timestamp(6) with time zone not null,
  primary key (visit, version)
);
create index visit_version_start on visit_version (starts_local);
