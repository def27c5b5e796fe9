-- Messages to families and calls to make, beside the visits and fills that cause them and written in their transaction.
-- idem names the reminder once and for all: rule, step, cause with its sequence, person, channel and the instant meant.
-- The body keeps a gap where the link stands; no copy of this table lets anybody in.
create table outbox_message (
  id uuid not null primary key,
  idem varchar(300) not null unique,
  cause varchar(60) not null,
  child uuid not null,
  person uuid not null,
  visit uuid,
  channel varchar(10) not null,
  language varchar(2) not null,
  zone varchar(60) not null,
  about varchar(40) not null,
  text_id varchar(60) not null,
  occasion_local timestamp(6) not null,
  occasion_zone varchar(60) not null,
  urgent boolean not null,
  subject varchar(300) not null,
  body text not null,
  link uuid,
  due timestamp(6) with time zone not null,
  useful_until timestamp(6) with time zone,
  state varchar(24) not null,
  tries integer not null,
  reason varchar(40) not null,
  note varchar(500) not null,
  by_hand boolean not null,
  doubtful boolean not null,
  unwanted boolean not null,
  worker varchar(60),
  lease_until timestamp(6) with time zone,
  settled_at timestamp(6) with time zone,
  created_at timestamp(6) with time zone not null,
  version bigint not null
);
create index outbox_message_due on outbox_message (state, due);
create index outbox_message_cause on outbox_message (cause);
create index outbox_message_child on outbox_message (child);
create index outbox_message_link on outbox_message (link);
