package org.hearthway.stimulator.engine;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * From when on a generator is looked at with its replacement in mind, and by when the new one should be in. It opens on
 * the earliest of the device's own estimate, the lower bound of the fit and, for one that is not charged, the age at
 * which the first were empty. It closes on the earliest of the estimate, the likely day of the fit and the life that
 * the label states.
 *
 * @param candidates every day that could open it, the earliest first
 * @param closes by when the new generator should be in, and why; empty while only its age is known
 * @param fit what the readings say; empty for one that is charged, whose readings tell nothing of its age
 */
public record Window(List<Candidate> candidates, Optional<Candidate> closes, Optional<BatteryFit.Answer> fit) {

    /** Where a day comes from. */
    public enum Source {
        /** The elective replacement that the device itself estimates. */
        ESTIMATE,
        /** The line through the readings. */
        FIT,
        /** The life that the label states, since the implant. */
        LIFE,
        /** The age at which the first generators were empty. */
        AGE
    }

    /** A day and where it comes from. */
    public record Candidate(Source source, LocalDate day) {}

    /**
     * What is known of a generator.
     *
     * @param implanted its own implant date
     * @param charge whether it is charged at home
     * @param lifeYears the life that the label states; of one that is charged
     * @param estimate the newest estimate of the device itself
     * @param end the level taken as the end of the readings; empty when it is not known
     */
    public record Known(
            LocalDate implanted,
            Charge charge,
            Optional<Integer> lifeYears,
            Optional<LocalDate> estimate,
            Optional<Double> end) {}

    public Window {
        candidates = List.copyOf(candidates);
    }

    /** The day on which it opens; empty when nothing is known of a generator that is charged. */
    public Optional<Candidate> opens() {
        return candidates.stream().findFirst();
    }

    /** From when on a new generator is planned: the earliest day that is more than its age; empty while there is none. */
    public Optional<Candidate> replacing() {
        return candidates.stream()
                .filter(candidate -> candidate.source() != Source.AGE)
                .findFirst();
    }

    /** Whether it opens to plan a new generator; if not, only its age says that the battery is to be looked at. */
    public boolean asksForReplacement() {
        return opens().filter(first -> first.source() != Source.AGE).isPresent();
    }

    /**
     * Computes it.
     *
     * @param readings since the implant, of one unit, in ascending order, no day twice
     * @param firstCheckMonths the age, in months since the implant, from which one that is not charged is looked at
     */
    public static Window of(Known known, List<Level> readings, int firstCheckMonths) {
        var charged = known.charge() == Charge.AT_HOME;
        var answer = charged ? Optional.<BatteryFit.Answer>empty() : Optional.of(BatteryFit.of(readings, known.end()));
        var fit = answer.flatMap(BatteryFit.Answer::fit);
        var estimate = known.estimate().map(day -> new Candidate(Source.ESTIMATE, day));
        var life = known.lifeYears()
                .filter(years -> charged)
                .map(years -> new Candidate(Source.LIFE, known.implanted().plusYears(years)));
        var opening = new ArrayList<Candidate>();
        estimate.ifPresent(opening::add);
        fit.ifPresent(line -> opening.add(new Candidate(Source.FIT, line.earliest())));
        life.ifPresent(opening::add);
        if (!charged) {
            opening.add(new Candidate(Source.AGE, known.implanted().plusMonths(firstCheckMonths)));
        }
        opening.sort(Comparator.comparing(Candidate::day).thenComparing(Candidate::source));
        var closing = Stream.of(estimate, fit.map(line -> new Candidate(Source.FIT, line.likely())), life)
                .flatMap(Optional::stream)
                .min(Comparator.comparing(Candidate::day).thenComparing(Candidate::source));
        return new Window(opening, closing, answer);
    }

    /**
     * The next day on which the battery should be read at the latest: the day it opens, and from then on so many days
     * after each reading, but not after the day it closes while that lies ahead of the reading.
     *
     * @param last the newest reading
     * @param everyDays days between two readings once it is open
     */
    public Optional<LocalDate> nextReading(Optional<LocalDate> last, int everyDays) {
        return opens().map(Candidate::day)
                .map(day -> last.filter(read -> !read.isBefore(day))
                        .map(read -> read.plusDays(everyDays))
                        .map(next -> closes().map(Candidate::day)
                                .filter(close -> close.isBefore(next) && close.isAfter(last.orElseThrow()))
                                .orElse(next))
                        .orElse(day));
    }
}
