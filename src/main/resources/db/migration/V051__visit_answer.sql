-- what each person said of a visit at the time it then had; nobody's word overwrites another's. Without a person it is the
-- office, which settles what was said before
create table visit_answer (
  visit uuid not null references visit (id),
  turn bigint not null,
  moves integer not null,
  person uuid,
  answer varchar(20) not null,
  wish varchar(500) not null,
  said_by varchar(80) not null,
  said_at timestamp(6) with time zone not null,
  primary key (visit, turn)
);
