-- a child and every version of what was entered about it; the newest version is the one that child names
create table child (
  id uuid not null primary key,
  version bigint not null,
  entered_at timestamp(6) with time zone not null
);

create table child_version (
  child uuid not null references child (id),
  version bigint not null,
  used_name varchar(80) not null,
  family_name varchar(120) not null,
  birth_date date not null,
  gmfcs smallint check (gmfcs between 1 and 5),
  skin_tone smallint not null check (skin_tone between 1 and 4),
  entered_by varchar(120) not null,
  entered_at timestamp(6) with time zone not null,
  primary key (child, version)
);

-- who cares for which child; the highest number of a pair holds, NONE ends it
create table caregiver_reach (
  child uuid not null references child (id),
  account uuid not null,
  number bigint not null,
  reach varchar(10) not null check (reach in ('FULL', 'VIEW_ONLY', 'NONE')),
  said_by varchar(120) not null,
  said_at timestamp(6) with time zone not null,
  primary key (child, account, number)
);

create index caregiver_reach_account on caregiver_reach (account, child);
