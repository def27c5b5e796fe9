package org.hearthway.visit.internal;

import java.time.DayOfWeek;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Language;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.hearthway.content.Provenance;
import org.hearthway.path.VisitKindNames;
import org.hearthway.visit.VisitKind;
import org.hearthway.words.Words;
import org.springframework.stereotype.Component;

/** The kinds of visit, one file each in {@code content/visits}. */
@Component
class VisitKinds implements ContentKind, VisitKindNames {

    private static final Provenance NOWHERE = new Provenance("", 1, Optional.empty(), Optional.empty());

    private final Map<String, VisitKind> kinds = new HashMap<>();
    private final Words words;

    VisitKinds(Words words) {
        this.words = words;
    }

    @Override
    public String place() {
        return "visits";
    }

    @Override
    public void read(Entry file) {
        var kind = new VisitKind(
                file.id(),
                file.bilingual("name"),
                file.integer("minutes", 5, 480),
                file.bilingual("with"),
                file.bilinguals("bring"),
                file.bilinguals("expect"),
                file.yes("critical"),
                Set.copyOf(file.weekdays("weekdays")),
                file.provenance());
        kinds.put(kind.id(), kind);
    }

    /** All kinds, by English name. */
    List<VisitKind> all() {
        return kinds.values().stream()
                .sorted(Comparator.comparing(kind -> kind.name().in(Language.EN)))
                .toList();
    }

    @Override
    public Optional<Bilingual> name(String kind) {
        return Optional.ofNullable(kinds.get(kind)).map(VisitKind::name);
    }

    @Override
    public Set<String> names() {
        return Set.copyOf(kinds.keySet());
    }

    @Override
    public Set<DayOfWeek> weekdays(String kind) {
        return find(kind).map(VisitKind::weekdays).orElse(Set.of());
    }

    Optional<VisitKind> find(String id) {
        return Optional.ofNullable(kinds.get(id));
    }

    /** The kind of a visit booked earlier; plainly "Visit" when the content has since dropped the kind. */
    VisitKind ofBooked(String id, int minutes) {
        return find(id).orElseGet(() -> {
            var plain = words.both("visit.kind.plain");
            var team = words.both("visit.kind.team");
            return new VisitKind(id, plain, minutes, team, List.of(), List.of(), false, Set.of(), NOWHERE);
        });
    }
}
