package org.hearthway.child.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hearthway.base.ChildId;
import org.hearthway.base.Holding;
import org.hearthway.base.Holding.Chain;
import org.hearthway.base.Holding.Kept;
import org.hearthway.base.Holding.Rows;
import org.hearthway.base.Holding.Table;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Moves what is kept of one child to another and back. What it moves it writes down row by row, or chain by chain,
 * because the child that stays has rows of its own.
 */
@Component
class HoldingMover {

    private static final String ONLY_CHAIN = "-";

    private final JdbcClient jdbc;

    HoldingMover(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The two entries. */
    record Pair(ChildId stays, ChildId folds) {}

    /** How many rows or chains would move, and how many would stay behind. */
    record Count(long moves, long staysBehind) {}

    Count count(Holding holding, Pair pair, List<Holding> all) {
        if (holding instanceof Rows rows) {
            var there = numberOf(
                    "select count(distinct %s) from %s where %s = :folds"
                            .formatted(
                                    rows.key(),
                                    rows.table().name(),
                                    rows.table().child()),
                    pair);
            var moves = numberOf(
                    "select count(distinct t.%s) from %s t where %s"
                            .formatted(rows.key(), rows.table().name(), movable(rows, pair, all)),
                    pair);
            return new Count(moves, there - moves);
        }
        if (holding instanceof Chain chain) {
            var there = chains(chain, pair.folds());
            var moves =
                    there.stream().filter(one -> !has(chain, pair.stays(), one)).count();
            return new Count(moves, there.size() - moves);
        }
        return new Count(0, 0);
    }

    /** Whether both have such a chain and that of the folding child is the newer one. */
    boolean isOlderInTheOneThatStays(Chain chain, Pair pair) {
        var table = chain.tables().get(0);
        var newest = "(select max(%s) from %s where %s".formatted(chain.at(), table.name(), isOf(chain, table));
        return chains(chain, pair.folds()).stream()
                .anyMatch(one -> jdbc.sql("select count(*) from child where id = :stays and %s < %s"
                                        .formatted(
                                                newest.replace(":child", ":stays") + ")",
                                                newest.replace(":child", ":folds") + ")"))
                                .param("stays", pair.stays().value())
                                .param("folds", pair.folds().value())
                                .param("one", one)
                                .query(Long.class)
                                .single()
                        > 0);
    }

    void move(UUID merge, Holding holding, Pair pair, List<Holding> all) {
        if (holding instanceof Rows rows) {
            moveRows(merge, rows, pair, all);
        } else if (holding instanceof Chain chain) {
            chains(chain, pair.folds()).stream()
                    .filter(one -> !has(chain, pair.stays(), one))
                    .toList()
                    .forEach(one -> {
                        note(merge, chain.name(), one, "");
                        carry(chain, pair.folds(), pair.stays(), one);
                    });
        } else if (holding instanceof Kept kept) {
            append(merge, kept, pair);
        }
    }

    void moveBack(UUID merge, Holding holding, Pair pair) {
        if (holding instanceof Rows rows) {
            rename(rows, pair.stays(), pair.folds(), merge);
        } else if (holding instanceof Chain chain) {
            moved(merge, chain.name()).forEach(move -> carry(chain, pair.stays(), pair.folds(), move.key()));
        } else if (holding instanceof Kept kept) {
            moved(merge, kept.name())
                    .forEach(move -> jdbc.sql("update %s set %s = :folds, %s = :was where %s = :stays and %s = :now"
                                    .formatted(
                                            kept.table().name(),
                                            kept.table().child(),
                                            kept.number(),
                                            kept.table().child(),
                                            kept.number()))
                            .param("folds", pair.folds().value())
                            .param("was", Long.valueOf(move.was()))
                            .param("stays", pair.stays().value())
                            .param("now", Long.valueOf(move.key()))
                            .update());
        }
    }

    // rows

    /** Also once more after the merge, for a row that another transaction wrote at the same moment. */
    void moveRows(UUID merge, Rows rows, Pair pair, List<Holding> all) {
        jdbc.sql("""
                        insert into child_merge_move (merge, part, row_key, was)
                        select distinct :merge, :part, cast(t.%s as varchar(200)), '' from %s t where %s
                          and cast(t.%s as varchar(200)) not in
                            (select row_key from child_merge_move where merge = :merge and part = :part)
                        """.formatted(rows.key(), rows.table().name(), movable(rows, pair, all), rows.key()))
                .param("merge", merge)
                .param("part", rows.name())
                .param("folds", pair.folds().value())
                .update();
        rename(rows, pair.folds(), pair.stays(), merge);
    }

    private void rename(Rows rows, ChildId from, ChildId to, UUID merge) {
        var names = rows.naming().stream()
                .map(column -> ", %1$s = replace(%1$s, '%2$s', '%3$s')".formatted(column, from, to))
                .collect(Collectors.joining());
        jdbc.sql("""
                        update %1$s set %2$s = :to%3$s
                        where %2$s = :from and cast(%4$s as varchar(200)) in
                          (select row_key from child_merge_move where merge = :merge and part = :part)
                        """.formatted(rows.table().name(), rows.table().child(), names, rows.key()))
                .param("to", to.value())
                .param("from", from.value())
                .param("merge", merge)
                .param("part", rows.name())
                .update();
    }

    /** A condition on the rows {@code t} of the folding child, its identifiers written out: they are no one's typing. */
    private String movable(Rows rows, Pair pair, List<Holding> all) {
        var condition = new StringBuilder("t.%s = :folds".formatted(rows.table().child()));
        if (rows.naming().isEmpty()) {
            return condition.toString();
        }
        var column = rows.naming().get(0);
        var unnamed = "t.%s is null or position('%s' in t.%s) = 0".formatted(column, pair.folds(), column);
        var free = "not exists (select 1 from %s k where k.%s = replace(t.%s, '%s', '%s'))"
                .formatted(rows.table().name(), column, column, pair.folds(), pair.stays());
        var leads = rows.follows().isEmpty() || chainMoves(rows.follows(), pair, all);
        return condition
                .append(" and (")
                .append(unnamed)
                .append(leads ? " or " + free : "")
                .append(")")
                .toString();
    }

    private boolean chainMoves(String name, Pair pair, List<Holding> all) {
        return all.stream()
                .filter(holding -> holding.name().equals(name))
                .map(Chain.class::cast)
                .allMatch(chain -> !has(chain, pair.stays(), ONLY_CHAIN));
    }

    // chains

    private List<String> chains(Chain chain, ChildId child) {
        return jdbc.sql("select distinct %s from %s where %s = :child order by 1"
                        .formatted(
                                nameOf(chain),
                                chain.tables().get(0).name(),
                                chain.tables().get(0).child()))
                .param("child", child.value())
                .query(String.class)
                .list();
    }

    private boolean has(Chain chain, ChildId child, String one) {
        return chain.tables().stream()
                .anyMatch(table ->
                        jdbc.sql("select count(*) from %s where %s".formatted(table.name(), isOf(chain, table)))
                                        .param("child", child.value())
                                        .param("one", one)
                                        .query(Long.class)
                                        .single()
                                > 0);
    }

    /** Copied first and taken away then, because links of one table may refer to those of another. */
    private void carry(Chain chain, ChildId from, ChildId to, String one) {
        for (var table : chain.tables()) {
            var columns = columns(table);
            jdbc.sql("insert into %s (%s, %s) select :to, %s from %s where %s"
                            .formatted(table.name(), table.child(), columns, columns, table.name(), isOf(chain, table)))
                    .param("to", to.value())
                    .param("child", from.value())
                    .param("one", one)
                    .update();
        }
        var children = new ArrayList<>(chain.tables());
        java.util.Collections.reverse(children);
        for (var table : children) {
            jdbc.sql("delete from %s where %s".formatted(table.name(), isOf(chain, table)))
                    .param("child", from.value())
                    .param("one", one)
                    .update();
        }
    }

    private static String isOf(Chain chain, Table table) {
        return "%s = :child and %s = :one".formatted(table.child(), nameOf(chain));
    }

    private static String nameOf(Chain chain) {
        return chain.by().isEmpty()
                ? "'" + ONLY_CHAIN + "'"
                : chain.by().stream()
                        .map(column -> "cast(%s as varchar(120))".formatted(column))
                        .collect(Collectors.joining(" || '|' || "));
    }

    /** All columns but the child's. */
    private String columns(Table table) {
        return Objects.requireNonNull(jdbc.sql("select * from %s where 1 = 0".formatted(table.name()))
                .query(rows -> {
                    var names = new ArrayList<String>();
                    for (int i = 1; i <= rows.getMetaData().getColumnCount(); i++) {
                        var name = rows.getMetaData().getColumnName(i);
                        if (!name.equalsIgnoreCase(table.child())) {
                            names.add(name);
                        }
                    }
                    return String.join(", ", names);
                }));
    }

    // what must not be lost

    private void append(UUID merge, Kept kept, Pair pair) {
        var behind = lastNumber(kept, pair.stays());
        if (behind > 0 && !stands(kept, pair.folds())) {
            return;
        }
        jdbc.sql("""
                        insert into child_merge_move (merge, part, row_key, was)
                        select :merge, :part, cast(%1$s + :behind as varchar(200)), cast(%1$s as varchar(200))
                        from %2$s where %3$s = :folds
                        """.formatted(kept.number(), kept.table().name(), kept.table().child()))
                .param("merge", merge)
                .param("part", kept.name())
                .param("behind", behind)
                .param("folds", pair.folds().value())
                .update();
        jdbc.sql("update %1$s set %2$s = :stays, %3$s = %3$s + :behind where %2$s = :folds"
                        .formatted(kept.table().name(), kept.table().child(), kept.number()))
                .param("stays", pair.stays().value())
                .param("behind", behind)
                .param("folds", pair.folds().value())
                .update();
    }

    private long lastNumber(Kept kept, ChildId child) {
        return jdbc.sql("select coalesce(max(%s), 0) from %s where %s = :child"
                        .formatted(
                                kept.number(), kept.table().name(), kept.table().child()))
                .param("child", child.value())
                .query(Long.class)
                .single();
    }

    private boolean stands(Kept kept, ChildId child) {
        return jdbc.sql("select count(*) from %s where %s = :child and %s = :last and %s"
                                .formatted(kept.table().name(), kept.table().child(), kept.number(), kept.stands()))
                        .param("child", child.value())
                        .param("last", lastNumber(kept, child))
                        .query(Long.class)
                        .single()
                > 0;
    }

    // what was written down

    private record Move(String key, String was) {}

    private void note(UUID merge, String part, String key, String was) {
        jdbc.sql("insert into child_merge_move (merge, part, row_key, was) values (?, ?, ?, ?)")
                .params(merge, part, key, was)
                .update();
    }

    private List<Move> moved(UUID merge, String part) {
        return jdbc.sql("select row_key, was from child_merge_move where merge = ? and part = ? order by row_key")
                .params(merge, part)
                .query((row, n) -> new Move(row.getString(1), row.getString(2)))
                .list();
    }

    private long numberOf(String sql, Pair pair) {
        return jdbc.sql(sql)
                .param("folds", pair.folds().value())
                .query(Long.class)
                .single();
    }
}
