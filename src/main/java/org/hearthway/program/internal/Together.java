package org.hearthway.program.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hearthway.base.AccountId;
import org.hearthway.program.HomeWeek.Entry;
import org.hearthway.program.HomeWeek.Logged;
import org.hearthway.program.HomeWeek.Outcome;

/**
 * What counts of all that was said of an exercise on a day. A row stands in the place of the same person's earlier rows
 * and of all that the person had before them; one that takes back counts as nothing. What two people said without
 * knowing of each other both counts and is shown as one: who did it, did it (done before some before could not), the
 * highest pain counts with who rated it, of the efforts by the same kind of person the highest, and all notes stand.
 * Nothing is thrown away: a number that is too high costs a call, one that is too low may cost more.
 */
final class Together {

    private Together() {}

    /**
     * One row.
     *
     * @param over the last turn in whose place it stands, whoever said that
     * @param takesBack whether it only takes back
     */
    record Row(long over, AccountId by, boolean takesBack, Logged logged) {

        private Slot slot() {
            return new Slot(logged.entry().exercise(), logged.entry().day());
        }

        private boolean standsInThePlaceOf(Row earlier) {
            return logged.turn() > earlier.logged.turn() && (by.equals(earlier.by) || over >= earlier.logged.turn());
        }
    }

    private record Slot(String exercise, LocalDate day) {}

    /** The rows that count, the first first. */
    static List<Row> counting(List<Row> rows) {
        var slots = rows.stream().collect(Collectors.groupingBy(Row::slot, LinkedHashMap::new, Collectors.toList()));
        return slots.values().stream()
                .flatMap(of -> of.stream()
                        .filter(row -> !row.takesBack() && of.stream().noneMatch(o -> o.standsInThePlaceOf(row))))
                .toList();
    }

    /** One for each exercise and day, the newest first. */
    static List<Logged> merged(List<Row> counting) {
        var merged = counting.stream()
                .collect(Collectors.groupingBy(Row::slot, LinkedHashMap::new, Collectors.toList()))
                .values()
                .stream()
                .map(rows -> merge(rows.stream().map(Row::logged).toList()))
                .collect(Collectors.toCollection(ArrayList::new));
        merged.sort(Comparator.comparingLong(Logged::turn).reversed());
        return Collections.unmodifiableList(merged);
    }

    private static Logged merge(List<Logged> voices) {
        if (voices.size() == 1) {
            return voices.get(0);
        }
        var newest = voices.get(voices.size() - 1);
        var best = voices.stream()
                .min(Comparator.comparing(voice -> voice.entry().outcome()))
                .orElseThrow();
        var pain = highest(voices, Entry::pain);
        // numbers of a child and of a grown-up are never joined: the effort is of whoever rated the pain
        var effort = highest(
                voices.stream()
                        .filter(voice -> pain.isEmpty()
                                || voice.entry().ratedBy().equals(pain.get().ratedBy()))
                        .toList(),
                Entry::effort);
        var entry = new Entry(
                newest.entry().key(),
                newest.entry().exercise(),
                newest.entry().day(),
                best.entry().outcome(),
                best.entry().outcome() == Outcome.COULD_NOT ? best.entry().reason() : Optional.empty(),
                effort.flatMap(Entry::effort),
                pain.flatMap(Entry::pain),
                pain.or(() -> effort).flatMap(Entry::ratedBy),
                notes(voices));
        return new Logged(
                entry,
                voices.get(0).by(),
                best.at(),
                newest.received(),
                newest.version(),
                voices.stream().flatMap(voice -> voice.became().stream()).findFirst(),
                newest.turn(),
                voices);
    }

    private interface Rating {
        Optional<Integer> of(Entry entry);
    }

    private static Optional<Entry> highest(List<Logged> voices, Rating rating) {
        return voices.stream()
                .map(Logged::entry)
                .filter(entry -> rating.of(entry).isPresent())
                .max(Comparator.comparing(entry -> rating.of(entry).orElseThrow()));
    }

    private static String notes(List<Logged> voices) {
        return voices.stream()
                .map(voice -> voice.entry().note())
                .filter(note -> !note.isBlank())
                .collect(Collectors.joining("\n"));
    }
}
