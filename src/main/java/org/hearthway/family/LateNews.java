package org.hearthway.family;

import com.vaadin.flow.component.Component;
import java.time.Duration;
import java.util.List;
import org.hearthway.parts.Icon;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.ProgramWords;

/** A plain word to the family about ticks that came in after the team had paused the exercise or taken it out. */
@org.springframework.stereotype.Component
class LateNews {

    /** So long it stands on Today after it came in. */
    private static final Duration STANDS = Duration.ofDays(3);

    private static final int DAYS_BACK = 31;

    private final HomeWeek week;
    private final ProgramWords words;

    LateNews(HomeWeek week, ProgramWords words) {
        this.week = week;
        this.words = words;
    }

    /** A strip for each exercise that it happened to. */
    List<Component> strips(Reader reader) {
        var since = reader.instant().minus(STANDS);
        var first = reader.today().minusDays(DAYS_BACK);
        return week.entries(reader.viewer(), reader.id(), first, reader.today()).stream()
                .filter(logged -> logged.received().isAfter(since))
                .flatMap(logged -> logged.became().stream()
                        .map(became -> reader.say(
                                "family.became." + became,
                                words.name(reader.language(), logged.entry().exercise()))))
                .distinct()
                .<Component>map(said -> Bits.strip("u-mb3", Icon.INFO, said))
                .toList();
    }
}
