-- nothing leaves the list without an outcome in words by a person, or a cause that is gone; nothing is set aside without a reason
alter table need_item add constraint need_item_leaves check (
  left_at is null or left_gone is not null
  or (left_outcome is not null and left_by is not null and left_words <> ''));
alter table need_item add constraint need_item_aside check (aside_until is null or aside_reason <> '');
