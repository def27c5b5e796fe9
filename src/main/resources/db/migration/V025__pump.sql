-- fills of a child's pump in the order they were recorded; rows are added, never altered
create table pump_fill (
  child_id uuid not null,
  fill_number bigint not null,
  filled_on date not null,
  alarm_on date not null,
  margin_days smallint not null check (margin_days between 3 and 14),
  life_limit_days smallint not null check (life_limit_days between 1 and 180),
  note varchar(500) not null,
  recorded_by uuid not null,
  recorded_at timestamp(6) with time zone not null,
  primary key (child_id, fill_number),
  check (alarm_on > filled_on)
);
