package org.hearthway.caseload.ui;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hearthway.base.Language;
import org.hearthway.caseload.Needs.Handed;
import org.hearthway.caseload.Needs.Item;
import org.hearthway.caseload.Needs.Turn;
import org.hearthway.words.Words;

/**
 * Puts into words how a report that cannot wait goes from one person on call to the next.
 *
 * @param needWords says moments
 */
record WayWords(Words words, NeedWords needWords, Language language, LocalDate today) {

    /**
     * What is said.
     *
     * @param loud whether it has passed somebody by, or there is nobody
     * @param says with whom it is
     * @param then who is next, or who was told before it was taken up
     */
    record Way(boolean loud, String says, String then) {}

    /** Empty for an item that takes no such way, and for one that was taken up by the first. */
    Optional<Way> of(Item item) {
        return item.handed().flatMap(handed -> handed.waits() ? Optional.of(waiting(handed)) : past(handed));
    }

    private Way waiting(Handed handed) {
        var next = handed.next()
                .map(turn -> say("caseload.call.next", turn.with().name(), moment(turn)))
                .orElse("");
        return handed.at()
                .map(at -> new Way(
                        handed.told().size() > 1,
                        say("caseload.call." + stretch(handed), at.with().name(), moment(at), people(handed)),
                        next))
                .orElseGet(() -> new Way(true, say("caseload.call.nobody"), ""));
    }

    private static String stretch(Handed handed) {
        if (handed.startedOver()) {
            return "over";
        }
        return handed.told().size() > 1 ? "went" : "with";
    }

    private static long people(Handed handed) {
        return handed.told().stream().map(Turn::with).distinct().count();
    }

    private Optional<Way> past(Handed handed) {
        var told = handed.told().stream()
                .map(turn -> say("caseload.call.turn", turn.with().name(), moment(turn)))
                .collect(Collectors.joining(" · "));
        return handed.told().size() > 1
                ? Optional.of(new Way(false, "", say("caseload.call.was", told)))
                : Optional.empty();
    }

    private String moment(Turn turn) {
        return needWords.moment(language, turn.since(), today);
    }

    private String say(String key, Object... args) {
        return words.say(language, key, args);
    }
}
