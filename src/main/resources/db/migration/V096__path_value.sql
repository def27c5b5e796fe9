-- what the clinic says of a path's values in place of its file, one change after the other; rows are added, never altered
create table path_value_change (
  pathway varchar(60) not null,
  number bigint not null,
  undoes bigint,
  reason varchar(500) not null,
  actor varchar(80) not null,
  account_id uuid,
  made_at timestamp(6) with time zone not null,
  primary key (pathway, number),
  foreign key (pathway, undoes) references path_value_change (pathway, number)
);

-- the values of a change: what counted before it, what the file said then, and what the clinic says (nothing: what the file says)
create table path_value (
  pathway varchar(60) not null,
  number bigint not null,
  stage varchar(80) not null,
  kind varchar(20) not null,
  part varchar(120) not null,
  before_it varchar(20) not null,
  shipped varchar(20) not null,
  own varchar(20),
  primary key (pathway, number, stage, kind, part),
  foreign key (pathway, number) references path_value_change (pathway, number)
);
