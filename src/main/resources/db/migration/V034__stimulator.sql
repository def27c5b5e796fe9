-- readings of stimulators as they were recorded, corrected and taken back; rows are added, never altered
create table stimulator_reading (
  child uuid not null,
  revision bigint not null,
  reading_number bigint not null,
  generator varchar(60) not null,
  taken_at timestamp(6) not null,
  battery numeric(6, 3),
  battery_unit varchar(10) not null,
  replace_on date,
  found_state varchar(12) not null,
  charge_every_days integer,
  last_charge date,
  note varchar(500) not null,
  emergency boolean not null,
  unusual varchar(200) not null,
  reason varchar(500) not null,
  withdrawn boolean not null,
  entered_by uuid not null,
  entered_at timestamp(6) with time zone not null,
  primary key (child, revision)
);

create table stimulator_impedance (
  child uuid not null,
  revision bigint not null,
  place integer not null,
  pair_name varchar(20) not null,
  ohms integer not null,
  primary key (child, revision, place),
  foreign key (child, revision) references stimulator_reading (child, revision)
);

create table stimulator_setting (
  child uuid not null,
  revision bigint not null,
  side varchar(10) not null,
  contacts varchar(60) not null,
  amplitude numeric(9, 3) not null,
  amplitude_unit varchar(20) not null,
  pulse_width integer not null,
  rate numeric(9, 3) not null,
  primary key (child, revision, side),
  foreign key (child, revision) references stimulator_reading (child, revision)
);

create table stimulator_other (
  child uuid not null,
  revision bigint not null,
  place integer not null,
  shown_name varchar(40) not null,
  shown_value varchar(40) not null,
  shown_unit varchar(20) not null,
  primary key (child, revision, place),
  foreign key (child, revision) references stimulator_reading (child, revision)
);

-- who typed the same figures again; the key lets one of two at once through
create table stimulator_check (
  child uuid not null,
  revision bigint not null,
  checked_by uuid not null,
  checked_at timestamp(6) with time zone not null,
  primary key (child, revision),
  foreign key (child, revision) references stimulator_reading (child, revision)
);

-- of what kind each generator is; rows are added, never altered
create table stimulator_generator (
  child uuid not null,
  serial varchar(60) not null,
  version bigint not null,
  charge varchar(10) not null,
  life_years integer,
  end_volts numeric(6, 3),
  entered_by uuid not null,
  entered_at timestamp(6) with time zone not null,
  primary key (child, serial, version)
);
