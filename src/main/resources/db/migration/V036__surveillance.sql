-- checks of hips and spine as they were recorded, corrected and taken back; rows are added, never altered
create table surveillance_check (
  child uuid not null,
  watched varchar(10) not null,
  revision bigint not null,
  check_number bigint not null,
  done_on date not null,
  done_by varchar(200) not null,
  migration_left numeric(4, 1),
  migration_right numeric(4, 1),
  cobb_angle integer,
  stable boolean not null,
  note varchar(500) not null,
  withdrawn boolean not null,
  entered_by uuid not null,
  entered_at timestamp(6) with time zone not null,
  primary key (child, watched, revision)
);
