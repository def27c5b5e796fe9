-- what needs a look; an item is altered only together with its version, and each step of its work is kept in need_step
create table need_item (
  id uuid primary key,
  child uuid not null,
  rule varchar(20) not null,
  cause varchar(120) not null,
  -- the child and the cause while the item is open, so that a cause has one open item at most
  open_cause varchar(160),
  fact_date date not null,
  fact_count bigint not null,
  fact_subject varchar(120) not null,
  urgency varchar(10),
  due_date date not null,
  due_at timestamp(6) with time zone,
  since timestamp(6) with time zone not null,
  owner uuid,
  seen_by uuid,
  seen_at timestamp(6) with time zone,
  aside_until date,
  aside_reason varchar(500) not null,
  left_at timestamp(6) with time zone,
  left_by uuid,
  left_outcome varchar(20),
  left_words varchar(500) not null,
  left_gone varchar(30),
  version bigint not null,
  constraint need_item_open unique (open_cause)
);
create index need_item_child on need_item (child, cause);
create index need_item_left on need_item (left_at);

create table need_step (
  item uuid not null,
  version bigint not null,
  step varchar(20) not null,
  by_tag varchar(80) not null,
  at timestamp(6) with time zone not null,
  until date,
  words varchar(500) not null,
  primary key (item, version)
);
