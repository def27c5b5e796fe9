-- who was told of a reported sign that nobody had taken up, and since when it was with that person
create table need_turn (
  item uuid not null references need_item (id),
  turn int not null,
  person uuid not null,
  since timestamp(6) with time zone not null,
  primary key (item, turn)
);
