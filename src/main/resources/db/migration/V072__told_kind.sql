-- what kind of change was told, so that a family can be led to where its reason stands
alter table told_change add column kind varchar(60) default '' not null;
