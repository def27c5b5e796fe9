-- mail to people of the clinic: it goes at any hour, and stops only for a child whom nobody watches any more
alter table outbox_message add column to_team boolean default false not null;
alter table outbox_quiet add column unwatched boolean default false not null;
