package org.hearthway.content.internal;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hearthway.base.Action;
import org.hearthway.base.Gate;
import org.hearthway.base.Viewer;
import org.hearthway.content.ContentKind;
import org.hearthway.content.FamilyText;
import org.hearthway.content.SignOff;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Lazy;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

@Service
class Acceptances implements SignOff {

    private final JdbcClient jdbc;
    private final Gate gate;
    private final ObjectProvider<ContentKind> kinds;
    private final Clock clock;
    private final boolean demo;

    Acceptances(
            JdbcClient jdbc,
            @Lazy Gate gate,
            ObjectProvider<ContentKind> kinds,
            Clock clock,
            @Value("${hearthway.kind}") String kind) {
        this.jdbc = jdbc;
        this.gate = gate;
        this.kinds = kinds;
        this.clock = clock;
        this.demo = kind.equals("demo");
    }

    @Override
    public boolean isShown(Item item) {
        return demo || isAccepted(item);
    }

    private boolean isAccepted(Item item) {
        return jdbc.sql("""
                                select count(*) from content_accepted
                                where kind = :kind and item = :item and version = :version
                                """)
                        .param("kind", item.kind())
                        .param("item", item.id())
                        .param("version", item.version())
                        .query(Long.class)
                        .single()
                > 0;
    }

    @Override
    public Set<Item> shownAmong(List<Item> items) {
        var shown = new HashSet<>(items);
        if (!demo && !shown.isEmpty()) {
            shown.retainAll(rows().stream().map(Acceptance::item).toList());
        }
        return shown;
    }

    private List<Acceptance> rows() {
        return jdbc.sql("select kind, item, version, accepted_by, accepted_at from content_accepted")
                .query((row, n) -> new Acceptance(
                        new Item(row.getString("kind"), row.getString("item"), row.getInt("version")),
                        row.getString("accepted_by"),
                        row.getObject("accepted_at", OffsetDateTime.class).toInstant()))
                .list();
    }

    @Override
    public List<FamilyText> all(Viewer viewer) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        return kinds.stream()
                .flatMap(kind -> kind.familyTexts().stream())
                .sorted(Comparator.comparing((FamilyText text) -> text.item().kind())
                        .thenComparing(text -> text.title().en()))
                .toList();
    }

    @Override
    @Transactional(readOnly = true)
    public List<Acceptance> accepted(Viewer viewer) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        return rows();
    }

    @Override
    @Transactional
    public void accept(Viewer viewer, List<Item> items) {
        gate.require(viewer, Action.MANAGE_CLINIC);
        var at = clock.instant().truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC);
        for (var item : new HashSet<>(items)) {
            if (!isAccepted(item)) {
                jdbc.sql("""
                                insert into content_accepted (kind, item, version, accepted_by, accepted_at)
                                values (:kind, :item, :version, :by, :at)
                                """)
                        .param("kind", item.kind())
                        .param("item", item.id())
                        .param("version", item.version())
                        .param("by", viewer.tag())
                        .param("at", at)
                        .update();
            }
        }
    }
}
