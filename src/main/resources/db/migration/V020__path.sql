-- what was decided for each child's path, in the order it was decided; rows are added, never altered
create table path_decision (
  child_id uuid not null,
  version bigint not null,
  kind varchar(12) not null check (kind in ('BEGUN', 'FIXED', 'SET_BY_HAND', 'BACK_TO_RULE')),
  pathway varchar(60) not null,
  stage varchar(60),
  given_day date,
  reason varchar(500) not null,
  actor varchar(80) not null,
  account_id uuid,
  decided_at timestamp(6) with time zone not null,
  primary key (child_id, version),
  check ((kind = 'BEGUN') = (stage is null)),
  check ((kind = 'BACK_TO_RULE') = (given_day is null))
);
