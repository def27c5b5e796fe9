-- what is known of a caregiver of a child; the highest number of a pair holds. Nights are seven signs, Monday first
create table caregiver_home (
  child uuid not null references child (id),
  account uuid not null,
  number bigint not null,
  relation varchar(60) not null,
  authority varchar(10) not null check (authority in ('YES', 'NO', 'NOT_KNOWN')),
  address varchar(300) not null,
  interpreter varchar(60) not null,
  nights varchar(7) not null,
  other_nights varchar(7) not null,
  turns_from date,
  shares_phone boolean not null,
  kept_apart boolean not null,
  note varchar(2000) not null,
  said_by varchar(120) not null,
  said_at timestamp(6) with time zone not null,
  primary key (child, account, number)
);
