package org.hearthway.access.ui;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Viewer;
import org.hearthway.content.FamilyText;
import org.hearthway.content.SignOff;
import org.hearthway.content.SignOff.Decided;
import org.hearthway.content.SignOff.Decision;
import org.hearthway.content.SignOff.OwnWords;

/**
 * A family text and where it stands with this clinic.
 *
 * @param decisions all of them, the oldest first
 * @param own the newest own words or withdrawal of each piece that ever had some
 * @param due the day on which it is to be looked at again
 */
record TextState(FamilyText text, List<Decision> decisions, Map<Integer, OwnWords> own, Optional<LocalDate> due) {

    /** All texts with their states, by kind and title. */
    static List<TextState> all(SignOff signOff, Viewer viewer, ZoneId zone) {
        var decisions = signOff.decisions(viewer).stream().collect(Collectors.groupingBy(Decision::item));
        var own = signOff.allOwnWords(viewer).stream().collect(Collectors.groupingBy(OwnWords::item));
        return signOff.all(viewer).stream()
                .map(text -> {
                    var decided = decisions.getOrDefault(text.item(), List.of());
                    var written = own.getOrDefault(text.item(), List.of()).stream()
                            .collect(Collectors.toMap(OwnWords::place, each -> each, (older, newer) -> newer));
                    var accepted = last(decided)
                            .filter(TextState::isAcceptance)
                            .map(decision -> LocalDate.ofInstant(decision.at(), zone));
                    return new TextState(text, decided, written, signOff.dueAgain(viewer, text, accepted));
                })
                .toList();
    }

    private static Optional<Decision> last(List<Decision> decisions) {
        return decisions.isEmpty() ? Optional.empty() : Optional.of(decisions.get(decisions.size() - 1));
    }

    private static boolean isAcceptance(Decision decision) {
        return decision.decided() == Decided.ACCEPTED;
    }

    /** The decision that counts. */
    Optional<Decision> decision() {
        return last(decisions);
    }

    boolean isAccepted() {
        return decision().filter(TextState::isAcceptance).isPresent();
    }

    boolean isSentBack() {
        return decision().isPresent() && !isAccepted();
    }

    boolean isDue(LocalDate today) {
        return due.filter(day -> !day.isAfter(today)).isPresent();
    }

    /** The clinic's own words for a piece that count now. */
    Optional<OwnWords> ownAt(int place) {
        return Optional.ofNullable(own.get(place)).filter(each -> each.words().isPresent());
    }

    /** The number of the newest own words of a piece, withdrawn or not. */
    int writtenAt(int place) {
        return Optional.ofNullable(own.get(place)).map(OwnWords::number).orElse(0);
    }

    boolean hasOwnWords() {
        return own.values().stream().anyMatch(each -> each.words().isPresent());
    }

    /** What a family reads at a place. */
    Bilingual shown(int place) {
        return ownAt(place)
                .flatMap(OwnWords::words)
                .orElseGet(() -> text.pieces().get(place));
    }
}
