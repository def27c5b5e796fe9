-- family content that a named administrator has accepted, per version of its text
create table content_accepted (
  kind varchar(60) not null,
  item varchar(120) not null,
  version int not null,
  accepted_by varchar(120) not null,
  accepted_at timestamp(6) with time zone not null,
  primary key (kind, item, version)
);
