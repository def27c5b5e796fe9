-- a child can be on several paths, a path can be ended, and a family can be away; the names of the checks let them be changed
alter table path_change rename to path_change_before;

create table path_change (
  child_id uuid not null,
  version bigint not null,
  kind varchar(16) not null,
  pathway varchar(60),
  stage varchar(80),
  given_day date,
  last_day date,
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
  constraint path_change_of_child primary key (child_id, version),
  constraint path_change_kind check (kind in ('BEGUN', 'BESIDE', 'CLOSED', 'AWAY', 'FIXED', 'SET_BY_HAND',
    'BACK_TO_RULE', 'ENDED', 'ADDED', 'SKIPPED', 'OWN_RULE', 'SHARED_RULE', 'UNDONE')),
  constraint path_change_pathway check (kind in ('AWAY', 'UNDONE') or pathway is not null),
  constraint path_change_stage check (kind in ('BEGUN', 'BESIDE', 'CLOSED', 'AWAY', 'UNDONE') or stage is not null),
  constraint path_change_no_stage check (kind not in ('CLOSED', 'AWAY', 'UNDONE') or stage is null),
  constraint path_change_day check
    ((kind in ('BEGUN', 'BESIDE', 'CLOSED', 'AWAY', 'FIXED', 'SET_BY_HAND', 'ENDED')) = (given_day is not null)),
  constraint path_change_last_day check ((kind = 'AWAY') = (last_day is not null)),
  constraint path_change_outcome check ((kind = 'ENDED') = (outcome is not null)),
  constraint path_change_rule_at check ((kind in ('OWN_RULE', 'SHARED_RULE')) = (rule_at is not null)),
  constraint path_change_earliest check ((kind = 'OWN_RULE') = (earliest is not null)),
  constraint path_change_undoes check ((kind = 'UNDONE') = (undoes is not null))
);

insert into path_change (child_id, version, kind, pathway, stage, given_day, outcome, rule_at, earliest, usual, latest,
    undoes, reason, actor, account_id, decided_at)
  select child_id, version, kind, pathway, stage, given_day, outcome, rule_at, earliest, usual, latest,
    undoes, reason, actor, account_id, decided_at from path_change_before;

drop table path_change_before;
