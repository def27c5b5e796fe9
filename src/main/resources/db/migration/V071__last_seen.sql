-- when a person last opened a child's day, and from when on changes are told to that person as new
create table last_seen (
  account_id uuid not null,
  child_id uuid not null,
  seen_at timestamp(6) with time zone not null,
  new_since timestamp(6) with time zone not null,
  version bigint not null,
  primary key (account_id, child_id)
);
