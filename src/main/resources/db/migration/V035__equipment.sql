-- splints and equipment; every version of an item is kept, the highest one counts
create table equipment_item (
  id uuid not null,
  version bigint not null,
  child uuid not null,
  kind varchar(60) not null,
  place varchar(20),
  side varchar(10),
  given_on date not null,
  lent_until date,
  by_day integer,
  by_night integer,
  schedule varchar(500) not null,
  build_up varchar(500) not null,
  skin_every integer,
  growth_every integer,
  back_on date,
  entered_by varchar(80) not null,
  entered_at timestamp(6) with time zone not null,
  primary key (id, version)
);
create index equipment_item_child on equipment_item (child);

-- looks at the skin under an item and at its fit, as they stood in a version
create table equipment_look (
  item uuid not null,
  version bigint not null,
  look_number integer not null,
  child uuid not null,
  what varchar(10) not null,
  looked_on date not null,
  outcome varchar(10) not null,
  next_on date,
  note varchar(500) not null,
  primary key (item, version, look_number),
  foreign key (item, version) references equipment_item (id, version)
);
create index equipment_look_child on equipment_look (child);

-- series of casts; every version is kept, the highest one counts
create table cast_series (
  id uuid not null,
  version bigint not null,
  child uuid not null,
  place varchar(20) not null,
  side varchar(10) not null,
  begun_on date not null,
  every_days integer not null,
  last_off date,
  ended_on date,
  entered_by varchar(80) not null,
  entered_at timestamp(6) with time zone not null,
  primary key (id, version)
);
create index cast_series_child on cast_series (child);

-- the casts of a series, as they stood in a version
create table cast_worn (
  series uuid not null,
  version bigint not null,
  cast_number integer not null,
  child uuid not null,
  put_on date not null,
  taken_off date,
  degrees integer,
  skin varchar(500) not null,
  primary key (series, version, cast_number),
  foreign key (series, version) references cast_series (id, version)
);
create index cast_worn_child on cast_worn (child);
