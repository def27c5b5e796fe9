-- what a physician signed for an emergency; rows are added, never altered
create table emergency_plan (
  child uuid not null,
  plan_number bigint not null,
  surgeon_line varchar(60) not null,
  catheter varchar(200) not null,
  withdrawal varchar(700) not null,
  storm varchar(700) not null,
  signed_by uuid not null,
  signed_by_name varchar(200) not null,
  signed_at timestamp(6) with time zone not null,
  primary key (child, plan_number)
);
