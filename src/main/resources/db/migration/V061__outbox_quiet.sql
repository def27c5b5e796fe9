-- children of whose families nothing is asked: their messages wait untouched until that ends
create table outbox_quiet (
  child uuid not null primary key,
  quiet boolean not null,
  since timestamp(6) with time zone not null
);
