-- what families report after a call, and notes to the team; the identifier is made on the phone, so that a report
-- that was sent twice counts once
create table sign_report (
  id uuid not null primary key,
  child uuid not null references child (id),
  called boolean not null,
  note varchar(2000) not null,
  reported_by uuid not null,
  reported_at timestamp(6) with time zone not null
);

create index sign_report_child on sign_report (child, reported_at);

-- the signs named, in the words and with the urgency that the family saw then
create table sign_report_sign (
  report uuid not null references sign_report (id),
  place int not null,
  sign varchar(80) not null,
  sign_version int not null,
  topic varchar(20) not null,
  urgency varchar(10) not null check (urgency in ('NOW', 'URGENT', 'HOURS')),
  en varchar(300) not null,
  es varchar(300) not null,
  source varchar(300) not null,
  primary key (report, place)
);

-- the first of the team who read it
create table sign_report_read (
  report uuid not null primary key references sign_report (id),
  read_by uuid not null,
  read_at timestamp(6) with time zone not null
);
