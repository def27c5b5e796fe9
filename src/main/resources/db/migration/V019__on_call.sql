-- who answers for what nobody took up, as an administrator said it; each time it is said anew is a version
create table on_call (
  version bigint not null primary key,
  minutes int not null,
  missed uuid references account (id),
  said_by uuid not null,
  said_at timestamp(6) with time zone not null
);

create table on_call_person (
  version bigint not null references on_call (version),
  hours varchar(10) not null check (hours in ('OFFICE', 'OUTSIDE')),
  place int not null,
  account uuid not null references account (id),
  primary key (version, hours, place)
);
