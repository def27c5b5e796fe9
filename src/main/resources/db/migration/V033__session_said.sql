-- a phone without a signal says later what was done earlier: when it was said, and when it came
alter table session_entry add column received_at timestamp(6) with time zone;
update session_entry set received_at = said_at;
alter table session_entry alter column received_at set not null;

-- the last turn of this exercise and day that the person had before them: what lies beyond it is another voice beside
alter table session_entry add column over_turn bigint default 0 not null;
update session_entry set over_turn = turn - 1;

-- the version of the program that the person saw, and what became of the exercise before the entry came
alter table session_entry add column seen_version integer;
alter table session_entry add column became varchar(12);
