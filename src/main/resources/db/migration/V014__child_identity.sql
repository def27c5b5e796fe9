-- what else is entered of a child: names by law, two surnames, gestation, allergies, interpreter
alter table child_version add column given_name varchar(80) default '' not null;
alter table child_version add column second_surname varchar(120) default '' not null;
alter table child_version add column gestation_weeks smallint check (gestation_weeks between 20 and 44);
alter table child_version add column gestation_days smallint check (gestation_days between 0 and 6);
alter table child_version add column allergies_asked boolean default false not null;
-- one a line
alter table child_version add column allergies text default '' not null;
alter table child_version add column interpreter varchar(60) default '' not null;

-- devices in the body; a record stays while any part is in, and is never deleted after that either
create table child_device (
  id uuid not null primary key,
  child uuid not null references child (id),
  version bigint not null,
  entered_at timestamp(6) with time zone not null
);
create index child_device_child on child_device (child);

create table child_device_part (
  device uuid not null references child_device (id),
  version bigint not null,
  place smallint not null,
  kind varchar(20) not null,
  part varchar(20) not null,
  serial varchar(60) not null,
  implanted_on date not null,
  removed_on date,
  entered_by varchar(120) not null,
  entered_at timestamp(6) with time zone not null,
  primary key (device, version, place),
  check (removed_on is null or removed_on >= implanted_on)
);
