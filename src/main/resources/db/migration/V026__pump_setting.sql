-- strength and daily dose as copied from print-outs, and their second checks; rows are added, never altered
create table pump_setting (
  child_id uuid not null,
  setting_number bigint not null,
  strength numeric(9, 3) not null,
  daily_dose numeric(9, 3) not null,
  printed_on date not null,
  entered_by uuid not null,
  entered_at timestamp(6) with time zone not null,
  primary key (child_id, setting_number)
);

create table pump_setting_check (
  child_id uuid not null,
  setting_number bigint not null,
  checked_by uuid not null,
  checked_at timestamp(6) with time zone not null,
  primary key (child_id, setting_number),
  foreign key (child_id, setting_number) references pump_setting (child_id, setting_number)
);
