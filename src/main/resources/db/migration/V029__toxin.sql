-- versions of toxin sessions and where each was given; units never stand without their preparation
create table toxin_session (
  session_id uuid not null,
  child_id uuid not null,
  version bigint not null,
  state varchar(12) not null,
  session_on date not null,
  given_by varchar(120) not null,
  note varchar(500) not null,
  early varchar(500) not null,
  recorded_by uuid not null,
  recorded_at timestamp(6) with time zone not null,
  primary key (session_id, version)
);
create index toxin_session_child on toxin_session (child_id);

create table toxin_injection (
  session_id uuid not null,
  child_id uuid not null,
  version bigint not null,
  place_number integer not null,
  muscle varchar(40) not null,
  side varchar(8) not null,
  units numeric(8, 2) not null check (units > 0),
  preparation varchar(80) not null check (preparation <> ''),
  primary key (session_id, version, place_number),
  foreign key (session_id, version) references toxin_session (session_id, version)
);
create index toxin_injection_child on toxin_injection (child_id);
