package org.hearthway.audit.internal;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.hearthway.audit.WhatChanged;
import org.hearthway.base.Action;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Viewer;
import org.springframework.context.annotation.Lazy;
import org.springframework.context.event.EventListener;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

@Service
class ToldChanges implements WhatChanged {

    private final JdbcClient jdbc;
    private final Gate gate;

    ToldChanges(JdbcClient jdbc, @Lazy Gate gate) {
        this.jdbc = jdbc;
        this.gate = gate;
    }

    /** Keeps the family's sentence, in the transaction that makes the change. */
    @EventListener
    void changed(Change change) {
        change.forFamily()
                .ifPresent(words -> jdbc.sql(
                                "insert into told_change (child, told_at, kind, en, es) values (:child, :at, :kind, :en, :es)")
                        .param("child", change.child().value())
                        .param("at", utc(change.at()))
                        .param("kind", change.kind())
                        .param("en", words.en())
                        .param("es", words.es())
                        .update());
    }

    private static OffsetDateTime utc(Instant at) {
        return at.truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC);
    }

    @Override
    @Transactional(readOnly = true)
    public List<Told> since(Viewer viewer, ChildId child, Instant after) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        return jdbc.sql("""
                        select told_at, kind, en, es from told_change
                        where child = :child and told_at > :after
                        order by told_at desc, number desc
                        """)
                .param("child", child.value())
                .param("after", utc(after))
                .query((row, n) -> new Told(
                        row.getObject("told_at", OffsetDateTime.class).toInstant(),
                        row.getString("kind"),
                        new Bilingual(row.getString("en"), row.getString("es"))))
                .list();
    }
}
