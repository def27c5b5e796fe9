-- what was said of a child's status, in order; rows are added, and only the second person of a death is written in later
create table child_standing (
  child uuid not null references child (id),
  number bigint not null,
  status varchar(12) not null check (status in ('ACTIVE', 'AWAY', 'MOVED', 'ADULT_CARE', 'LEFT', 'DIED')),
  said_by uuid not null,
  said_at timestamp(6) with time zone not null,
  reason varchar(500) not null,
  receiving_service varchar(200) not null,
  device_date date,
  confirmed_by uuid,
  confirmed_at timestamp(6) with time zone,
  undoes bigint,
  primary key (child, number)
);
