-- A task is a row that never changes and versions of it that are only added; the newest version counts.
-- It leaves with an outcome only: done by somebody, or not needed with a reason; set aside asks for a day and a reason.
create table task (
  id uuid not null primary key,
  child uuid not null,
  given_by uuid not null,
  given_at timestamp(6) with time zone not null
);
create index task_child on task (child);

create table task_version (
  task uuid not null references task (id),
  version bigint not null,
  step varchar(12) not null,
  to_kind varchar(10) not null,
  to_account uuid,
  to_role varchar(20),
  says_en varchar(300) not null,
  says_es varchar(300) not null,
  due date not null,
  stage varchar(120),
  state varchar(10) not null,
  aside_until date,
  reason varchar(500) not null,
  ended_by uuid,
  ended_at timestamp(6) with time zone,
  changed_by varchar(80) not null,
  changed_at timestamp(6) with time zone not null,
  primary key (task, version),
  constraint task_version_says check (says_en <> '' or says_es <> ''),
  constraint task_version_to check (
    (to_kind in ('PERSON', 'CAREGIVER') and to_account is not null and to_role is null)
    or (to_kind = 'ROLE' and to_account is null and to_role is not null)
    or (to_kind = 'FAMILY' and to_account is null and to_role is null)),
  constraint task_version_outcome check (
    (state = 'OPEN' and aside_until is null and reason = '' and ended_by is null and ended_at is null)
    or (state = 'ASIDE' and aside_until is not null and reason <> '' and ended_by is null and ended_at is null)
    or (state = 'DONE' and reason = '' and ended_by is not null and ended_at is not null)
    or (state = 'NOT_NEEDED' and reason <> '' and ended_by is not null and ended_at is not null))
);
