-- who is trusted with safeguarding flags of all children; the highest number of an account holds
create table safeguarding_person (
  account uuid not null,
  number bigint not null,
  named boolean not null,
  said_by varchar(120) not null,
  said_at timestamp(6) with time zone not null,
  primary key (account, number)
);

-- the flag of a child; it leaves no line in the trail that others read, so who and when stand here
create table safeguarding_flag (
  child uuid not null references child (id),
  number bigint not null,
  raised boolean not null,
  words varchar(2000) not null,
  said_by uuid not null,
  said_at timestamp(6) with time zone not null,
  primary key (child, number)
);
