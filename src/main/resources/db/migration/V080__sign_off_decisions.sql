-- what administrators decided on a family text, per version of its text; the newest decision counts, none is taken away
create table content_decision (
  kind varchar(60) not null,
  item varchar(120) not null,
  version int not null,
  number int not null,
  decided varchar(20) not null,
  reason varchar(500) not null,
  decided_by varchar(120) not null,
  decided_at timestamp(6) with time zone not null,
  primary key (kind, item, version, number)
);
insert into content_decision (kind, item, version, number, decided, reason, decided_by, decided_at)
  select kind, item, version, 1, 'ACCEPTED', '', accepted_by, accepted_at from content_accepted;
drop table content_accepted;

-- the clinic's own words in place of one piece of a text; the newest count, and both empty means the text's own again
create table content_own_words (
  kind varchar(60) not null,
  item varchar(120) not null,
  version int not null,
  place int not null,
  number int not null,
  en text,
  es text,
  written_by varchar(120) not null,
  written_at timestamp(6) with time zone not null,
  primary key (kind, item, version, place, number)
);
