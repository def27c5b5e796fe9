-- who helps a child outside the clinic and until when; the highest number of a pair holds, ENDED ends it before its day
create table child_helper (
  child uuid not null references child (id),
  account uuid not null,
  number bigint not null,
  kind varchar(20) not null check (kind in ('THERAPIST', 'SCHOOL_AIDE', 'OTHER')),
  state varchar(10) not null check (state in ('HELPING', 'ENDED')),
  last_day date not null,
  consent_by uuid not null,
  consent_on date not null,
  said_by varchar(120) not null,
  said_at timestamp(6) with time zone not null,
  primary key (child, account, number)
);

create index child_helper_account on child_helper (account, child);
