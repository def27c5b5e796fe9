-- taper calendars as physicians signed them, their rows and their second checks; rows are added, never altered
create table taper (
  medicine_id uuid not null,
  child_id uuid not null,
  taper_number bigint not null,
  -- the line of the list that the calendar was signed for
  medicine_version bigint not null,
  stops_on date,
  signed_by uuid not null,
  signed_at timestamp(6) with time zone not null,
  primary key (medicine_id, taper_number),
  foreign key (medicine_id, medicine_version) references medicine (medicine_id, version)
);
create index taper_child on taper (child_id);

create table taper_step (
  medicine_id uuid not null,
  child_id uuid not null,
  taper_number bigint not null,
  from_on date not null,
  dose varchar(200) not null,
  primary key (medicine_id, taper_number, from_on),
  foreign key (medicine_id, taper_number) references taper (medicine_id, taper_number)
);
create index taper_step_child on taper_step (child_id);

create table taper_check (
  medicine_id uuid not null,
  child_id uuid not null,
  taper_number bigint not null,
  checked_by uuid not null,
  checked_at timestamp(6) with time zone not null,
  primary key (medicine_id, taper_number),
  foreign key (medicine_id, taper_number) references taper (medicine_id, taper_number)
);
create index taper_check_child on taper_check (child_id);
