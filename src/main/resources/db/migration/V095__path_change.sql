-- what was decided for each child's path, in the order it was decided; rows are added, never altered
create table path_change (
  child_id uuid not null,
  version bigint not null,
  kind varchar(16) not null check (kind in
    ('BEGUN', 'FIXED', 'SET_BY_HAND', 'BACK_TO_RULE', 'ENDED', 'ADDED', 'SKIPPED', 'OWN_RULE', 'SHARED_RULE', 'UNDONE')),
  pathway varchar(60) not null,
  stage varchar(80),
  given_day date,
  outcome varchar(60),
  rule_at int,
  earliest varchar(20),
  usual varchar(20),
  latest varchar(20),
  undoes bigint,
  reason varchar(500) not null,
  actor varchar(80) not null,
  account_id uuid,
  decided_at timestamp(6) with time zone not null,
  primary key (child_id, version),
  check (kind in ('BEGUN', 'UNDONE') or stage is not null),
  check (kind <> 'UNDONE' or stage is null),
  check ((kind in ('BEGUN', 'FIXED', 'SET_BY_HAND', 'ENDED')) = (given_day is not null)),
  check ((kind = 'ENDED') = (outcome is not null)),
  check ((kind in ('OWN_RULE', 'SHARED_RULE')) = (rule_at is not null)),
  check ((kind = 'OWN_RULE') = (earliest is not null)),
  check ((kind = 'UNDONE') = (undoes is not null))
);

insert into path_change (child_id, version, kind, pathway, stage, given_day, reason, actor, account_id, decided_at)
  select child_id, version, kind, pathway, stage, given_day, reason, actor, account_id, decided_at from path_decision;

drop table path_decision;
