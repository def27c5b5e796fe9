package org.hearthway.path.internal;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.hearthway.content.SignOff;
import org.hearthway.path.ClinicValues.Own;
import org.hearthway.path.engine.Fitted;
import org.hearthway.path.engine.Template;
import org.hearthway.path.engine.ValuePlace;
import org.springframework.stereotype.Component;

/** The pathways as this clinic has them: the content, with the clinic's own words and its own values where it has some. */
@Component
class ClinicPaths {

    private final PathKind content;
    private final SignOff signOff;
    private final ValueRows values;
    private final Map<String, Known> known = new ConcurrentHashMap<>();

    /** What came of a path and a history the last time: every plan of the clinic needs the same. */
    private record Known(Template shipped, ValueHistory history, Fitted fitted, Map<ValuePlace, Own> own) {}

    ClinicPaths(PathKind content, SignOff signOff, ValueRows values) {
        this.content = content;
        this.signOff = signOff;
        this.values = values;
    }

    List<Template> all() {
        return content.all().stream().map(this::ofTheClinic).toList();
    }

    Optional<Template> find(String id) {
        return content.find(id).map(this::ofTheClinic);
    }

    /** With the values that the clinic had at a moment. */
    Optional<Template> asOf(String id, Instant moment) {
        var history = values.of(id);
        var then = history.until(moment);
        return then.version() == history.version()
                ? find(id)
                : shipped(id).map(path -> Fitted.of(path, then.amounts()).template());
    }

    /** In the clinic's words, with the values of the file. */
    Optional<Template> shipped(String id) {
        return content.find(id).map(this::inTheClinicsWords);
    }

    /** The paths' identifiers, in the order of the content. */
    List<String> ids() {
        return content.all().stream().map(Template::id).toList();
    }

    /** The clinic's own values that count in a path. */
    Map<ValuePlace, Own> own(String id) {
        var history = values.of(id);
        return history.changes().isEmpty()
                ? Map.of()
                : shipped(id).map(path -> known(path, history).own()).orElse(Map.of());
    }

    private Template ofTheClinic(Template template) {
        var history = values.of(template.id());
        var shipped = inTheClinicsWords(template);
        return history.changes().isEmpty()
                ? shipped
                : known(shipped, history).fitted().template();
    }

    private Known known(Template shipped, ValueHistory history) {
        var last = known.get(shipped.id());
        if (last != null && last.history().equals(history) && last.shipped().equals(shipped)) {
            return last;
        }
        var fitted = Fitted.of(shipped, history.amounts());
        var own = history.own();
        own.keySet().retainAll(fitted.own().keySet());
        var now = new Known(shipped, history, fitted, Map.copyOf(own));
        known.put(shipped.id(), now);
        return now;
    }

    private Template inTheClinicsWords(Template template) {
        var own = signOff.ownWords(new SignOff.Item("paths", template.id(), template.version()));
        return own.isEmpty() ? template : PathPieces.with(template, own);
    }
}
