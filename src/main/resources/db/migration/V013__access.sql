create table account (
  id uuid not null primary key,
  name varchar(120) not null,
  email varchar(254) not null unique,
  phone varchar(40) not null,
  language varchar(2) not null,
  zone varchar(64) not null,
  state varchar(10) not null check (state in ('INVITED', 'ACTIVE', 'DISABLED')),
  password_hash varchar(200),
  created_at timestamp(6) with time zone not null,
  version bigint not null
);

create table account_role (
  account uuid not null references account (id),
  role varchar(20) not null,
  primary key (account, role)
);

-- wrong passwords in a row, and from when the next try is looked at; counted apart for devices that were signed in
-- before, so that a stranger's guesses do not keep the right person out
create table sign_in_delay (
  account uuid not null references account (id),
  known_device boolean not null,
  failures int not null,
  next_try timestamp(6) with time zone not null,
  primary key (account, known_device)
);

-- the token of a link is derived from its id with a key kept outside the database
create table access_link (
  id uuid not null primary key,
  purpose varchar(20) not null,
  subject uuid not null,
  created_at timestamp(6) with time zone not null,
  expires_at timestamp(6) with time zone not null,
  used_at timestamp(6) with time zone,
  revoked_at timestamp(6) with time zone
);

create index access_link_subject on access_link (subject, purpose);

-- phones on which a caregiver stays signed in; only hashes of tokens are kept
create table remembered_phone (
  series uuid not null primary key,
  account uuid not null references account (id),
  token_hash varchar(64) not null,
  former_hash varchar(64),
  rotated_at timestamp(6) with time zone not null,
  created_at timestamp(6) with time zone not null,
  expires_at timestamp(6) with time zone not null,
  revoked_at timestamp(6) with time zone,
  version bigint not null
);

create index remembered_phone_account on remembered_phone (account);
