package org.hearthway.program.ui;

import com.vaadin.flow.component.Component;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.program.HomeWeek.Logged;

/** What came from a phone after its exercise was forbidden or taken out: kept, and told to the team. */
final class LateTicks {

    private LateTicks() {}

    /** A strip that tells them, the newest first; empty when there are none. */
    static Optional<Component> of(HowSay say, ZoneId zone, List<Logged> entries) {
        var late =
                entries.stream().filter(logged -> logged.became().isPresent()).toList();
        if (late.isEmpty()) {
            return Optional.empty();
        }
        var words = Tags.div("", Tags.p("hw-b", say.say("late.title")));
        late.forEach(logged -> words.add(Tags.p("hw-s", line(say, zone, logged))));
        var banner = Tags.div("hw-banner u-my2", Icon.INFO.draw(), words);
        banner.getElement().setAttribute("role", "note");
        return Optional.of(banner);
    }

    private static String line(HowSay say, ZoneId zone, Logged logged) {
        var entry = logged.entry();
        var told = say.one(
                "late",
                logged.became().orElseThrow().name(),
                say.name(entry.exercise()),
                say.date(entry.day()),
                say.one("late.outcome", entry.outcome().name()),
                say.words().list(say.language(), logged.names()),
                say.date(LocalDate.ofInstant(logged.received(), zone)));
        return logged.version()
                .map(version -> told + " " + say.say("late.version", version))
                .orElse(told);
    }
}
