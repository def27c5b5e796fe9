package org.hearthway.family;

import com.vaadin.flow.component.Component;
import java.util.List;
import java.util.Optional;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.program.Programs.Version;

/** The word to the family that came with the newest program, in the words of who wrote it, for its first week. */
final class TeamWord {

    private TeamWord() {}

    static Optional<Component> strip(Reader reader, Version newest, List<DayStory> days) {
        var isFresh = days.stream()
                .map(day -> day.day().date())
                .anyMatch(day -> !day.isBefore(newest.effective())
                        && day.isBefore(newest.effective().plusDays(ChangedLines.DAYS_SHOWN)));
        return Optional.of(newest.toFamily())
                .filter(word -> isFresh && !word.isBlank())
                .map(word -> Bits.strip(
                        "u-mb3",
                        Icon.INFO,
                        Tags.div(
                                "",
                                Bits.el("b", "", reader.say("family.week.word")),
                                Bits.el("span", "u-block", reader.say("family.week.word.says", word)))));
    }
}
