-- the book of a child's pump: its figures, refills, changes of dose, their second checks; rows are added, never altered
create table pump_entry (
  child_id uuid not null,
  entry_number bigint not null,
  kind varchar(10) not null constraint pump_entry_kind check (kind in ('IMPLANT', 'REFILL', 'ELSEWHERE', 'CHANGE')),
  done_at timestamp(6) with time zone not null,
  -- the entry in whose place it stands
  corrects bigint,
  correction varchar(500) not null,
  emergency boolean not null,
  -- what was said about what is out of the usual
  unusual varchar(500) not null,
  -- kept in the book of before and counted there, where no second person was asked
  carried boolean not null,
  strength numeric(9, 3),
  dosing varchar(10) constraint pump_entry_dosing check (dosing in ('CONSTANT', 'CYCLE', 'WEEK', 'STOPPED', 'FIXED')),
  daily_dose numeric(9, 3),
  fixed_flow numeric(9, 6),
  withdrawn numeric(8, 4),
  left_behind numeric(8, 4),
  injected numeric(8, 4),
  measured numeric(8, 4),
  beyond_use date,
  printed_alarm date,
  margin_days smallint,
  reason varchar(500) not null,
  entered_by uuid not null,
  entered_at timestamp(6) with time zone not null,
  primary key (child_id, entry_number),
  constraint pump_entry_set check ((strength is null) = (dosing is null)),
  constraint pump_entry_correction check ((corrects is null) = (correction = ''))
);

create table pump_step (
  child_id uuid not null,
  entry_number bigint not null,
  -- 0 is every day, 1 is Monday
  week_day smallint not null,
  from_minute smallint not null,
  to_minute smallint not null,
  rate numeric(9, 4) not null,
  primary key (child_id, entry_number, week_day, from_minute),
  foreign key (child_id, entry_number) references pump_entry (child_id, entry_number)
);

create table pump_bolus (
  child_id uuid not null,
  entry_number bigint not null,
  week_day smallint not null,
  at_minute smallint not null,
  dose numeric(9, 3) not null,
  minutes smallint not null,
  adds boolean not null,
  primary key (child_id, entry_number, week_day, at_minute),
  foreign key (child_id, entry_number) references pump_entry (child_id, entry_number)
);

create table pump_implant (
  child_id uuid not null,
  entry_number bigint not null,
  pump_kind varchar(60) not null,
  reservoir numeric(8, 4) not null,
  alarm_volume numeric(8, 4) not null,
  tubing numeric(8, 4) not null,
  least_flow numeric(9, 6) not null,
  most_flow numeric(9, 6) not null,
  life_months smallint not null,
  fixed_flow numeric(9, 6),
  catheter_length numeric(8, 2),
  per_length numeric(9, 6),
  primary key (child_id, entry_number),
  foreign key (child_id, entry_number) references pump_entry (child_id, entry_number)
);

create table pump_refill (
  child_id uuid not null,
  entry_number bigint not null,
  drug varchar(120) not null,
  lot varchar(60) not null,
  expires_on date,
  look varchar(200) not null,
  attempts smallint not null,
  watched_from timestamp(6),
  watched_until timestamp(6),
  read_again boolean not null,
  done_by varchar(120) not null,
  note varchar(500) not null,
  primary key (child_id, entry_number),
  foreign key (child_id, entry_number) references pump_entry (child_id, entry_number)
);

create table pump_check (
  child_id uuid not null,
  entry_number bigint not null,
  checked_by uuid not null,
  checked_at timestamp(6) with time zone not null,
  primary key (child_id, entry_number),
  foreign key (child_id, entry_number) references pump_entry (child_id, entry_number)
);

create table pump_explained (
  child_id uuid not null,
  entry_number bigint not null,
  words varchar(500) not null,
  said_by uuid not null,
  said_at timestamp(6) with time zone not null,
  primary key (child_id, entry_number, said_at),
  foreign key (child_id, entry_number) references pump_entry (child_id, entry_number)
);

-- what was kept before: fills known by their print-out, and settings with their second check
insert into pump_entry (child_id, entry_number, kind, done_at, correction, emergency, unusual, carried, strength,
  dosing, daily_dose, printed_alarm, margin_days, reason, entered_by, entered_at)
select child_id, row_number() over (partition by child_id order by entered_at, kind desc), kind, done_at, '', false, '',
  kind = 'REFILL', strength, dosing, daily_dose, printed_alarm, margin_days, '', entered_by, entered_at
from (
  select child_id, 'REFILL' as kind, cast(filled_on as timestamp(6) with time zone) + interval '12' hour as done_at,
    cast(null as numeric(9, 3)) as strength, cast(null as varchar(10)) as dosing,
    cast(null as numeric(9, 3)) as daily_dose, alarm_on as printed_alarm, margin_days, recorded_by as entered_by,
    recorded_at as entered_at
  from pump_fill
  union all
  select child_id, 'CHANGE', cast(printed_on as timestamp(6) with time zone) + interval '12' hour, strength, 'CONSTANT',
    daily_dose, null, null, entered_by, entered_at
  from pump_setting
) kept;

insert into pump_refill (child_id, entry_number, drug, lot, look, attempts, read_again, done_by, note)
select e.child_id, e.entry_number, '', '', '', 0, false, '', f.note
from pump_entry e join pump_fill f
  on f.child_id = e.child_id and f.recorded_at = e.entered_at and f.recorded_by = e.entered_by and e.kind = 'REFILL';

insert into pump_check (child_id, entry_number, checked_by, checked_at)
select e.child_id, e.entry_number, c.checked_by, c.checked_at
from pump_entry e
  join pump_setting s on s.child_id = e.child_id and s.entered_at = e.entered_at and s.entered_by = e.entered_by
    and e.kind = 'CHANGE'
  join pump_setting_check c on c.child_id = s.child_id and c.setting_number = s.setting_number;

drop table pump_setting_check;
drop table pump_setting;
drop table pump_fill;
