-- what an exercise said when it was prescribed, in each version of its text; outlives the file
create table kept_exercise (
  exercise varchar(80) not null,
  text_version integer not null,
  body text not null,
  kept_at timestamp(6) with time zone not null,
  primary key (exercise, text_version)
);
