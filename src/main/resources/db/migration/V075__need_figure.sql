-- what the clinic says of a number of Needs a look in place of what ships; rows are added, never altered
create table need_figure (
  figure varchar(30) not null,
  version bigint not null,
  before_it integer not null,
  -- nothing: what ships counts again
  own integer,
  reason varchar(500) not null,
  said_by uuid not null,
  said_at timestamp(6) with time zone not null,
  primary key (figure, version)
);
