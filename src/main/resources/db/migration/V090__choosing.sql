-- facts for the choice of a path, a version each time somebody enters some; rows are added, never altered
create table choosing_facts (
  child uuid not null,
  version bigint not null,
  facts text not null,
  entered_by uuid not null,
  entered_at timestamp(6) with time zone not null,
  primary key (child, version)
);

-- what the team and the family decided, as it was written down; no path means none for now
create table choosing_decision (
  child uuid not null,
  decision_number bigint not null,
  pathway varchar(60),
  decided_on date not null,
  present varchar(300) not null,
  reason varchar(500) not null,
  entered_by uuid not null,
  entered_at timestamp(6) with time zone not null,
  primary key (child, decision_number)
);
