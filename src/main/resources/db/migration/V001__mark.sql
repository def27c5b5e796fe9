-- what a database belongs to: the demo or a real clinic; one row, written at the first start
create table clinic_mark (
  only_row smallint primary key check (only_row = 1),
  kind varchar(10) not null check (kind in ('demo', 'clinic')),
  marked_on date not null
);
