-- Two entries of one child, put together: the one that folds goes on as the other one.
alter table child add column folded_into uuid;
alter table child add constraint child_folds foreign key (folded_into) references child (id);

-- The children that are there, for every statement that lists children: one that was folded into another is not.
create view child_present as select id from child where folded_into is null;

create table child_merge (
  id uuid not null primary key,
  stays uuid not null references child (id),
  folds uuid not null references child (id),
  number bigint not null,
  merged_by uuid not null,
  merged_at timestamp(6) with time zone not null,
  reason varchar(500) not null,
  parted_by uuid,
  parted_at timestamp(6) with time zone,
  parted_reason varchar(500) not null,
  unique (folds, number),
  check ((parted_by is null) = (parted_at is null)),
  check (parted_at is null or parted_reason <> '')
);
create index child_merge_stays on child_merge (stays);

-- What was moved, row by row or chain by chain, so that it can be moved back.
create table child_merge_move (
  merge uuid not null references child_merge (id),
  part varchar(60) not null,
  row_key varchar(200) not null,
  was varchar(200) not null,
  primary key (merge, part, row_key)
);
