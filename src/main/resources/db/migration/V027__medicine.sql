-- versions of the lines of a child's medicine list, and their second checks; rows are added, never altered
create table medicine (
  medicine_id uuid not null,
  child_id uuid not null,
  version bigint not null,
  name varchar(120) not null,
  form varchar(120) not null,
  given varchar(12) not null,
  dose varchar(300) not null,
  amount numeric(8, 3),
  unit varchar(12),
  purpose_en varchar(200) not null,
  purpose_es varchar(200) not null,
  since_on date not null,
  prescriber varchar(120) not null,
  stopped_on date,
  stop_reason varchar(300) not null,
  entered_by uuid not null,
  entered_at timestamp(6) with time zone not null,
  primary key (medicine_id, version),
  check ((amount is null and unit is null) or (amount is not null and unit is not null)),
  check (stopped_on is null or stopped_on >= since_on)
);
create index medicine_child on medicine (child_id);

create table medicine_check (
  medicine_id uuid not null,
  child_id uuid not null,
  version bigint not null,
  checked_by uuid not null,
  checked_at timestamp(6) with time zone not null,
  primary key (medicine_id, version),
  foreign key (medicine_id, version) references medicine (medicine_id, version)
);
create index medicine_check_child on medicine_check (child_id);
