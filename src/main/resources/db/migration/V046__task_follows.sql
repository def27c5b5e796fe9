-- The first day of the stage when the day of its task was set: from there the day moves with the stage.
-- A task kept before has none and keeps the day it was given.
alter table task_version add column stage_begins date;
-- What a stage asks is kept in its own words, and those a clinic writes may be longer than a task that is typed.
alter table task_version alter column says_en set data type varchar(2000);
alter table task_version alter column says_es set data type varchar(2000);
