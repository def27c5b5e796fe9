-- days on which this clinic is closed besides the holidays of every year; each time a day is said anew is a version
create table closed_day (
  closed_on date not null,
  version bigint not null,
  closed boolean not null,
  name_en varchar(80) not null,
  name_es varchar(80) not null,
  said_by uuid not null,
  said_at timestamp(6) with time zone not null,
  primary key (closed_on, version)
);
