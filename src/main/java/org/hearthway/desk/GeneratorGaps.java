package org.hearthway.desk;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hearthway.desk.DeskContent.GeneratorRules;
import org.hearthway.desk.DeskContent.GeneratorRules.Kinds;
import org.hearthway.stimulator.Stimulators.Due;
import org.hearthway.visit.Visit;

/**
 * The visits that a child's stimulators ask for: to read the battery, to plan a new generator. A visit that took place
 * in the window answers for it, so that nothing is asked for while its reading is written down.
 */
record GeneratorGaps(GeneratorRules rules, LocalDate today) {

    Stream<Gaps.Check> of(List<Due> generators, List<Visit> visits) {
        // by place and not by serial number, which somebody typed: the purpose stands in addresses
        return IntStream.range(0, generators.size()).boxed().flatMap(place -> {
            var due = generators.get(place);
            return Stream.concat(
                    check("battery/" + (place + 1), rules.read(), due.nextReading(), visits),
                    check("generator/" + (place + 1), rules.replace(), due.replaceFrom(), visits));
        });
    }

    private Stream<Gaps.Check> check(String purpose, Kinds kinds, Optional<LocalDate> day, List<Visit> visits) {
        return day
                .filter(by -> visits.stream().noneMatch(visit -> kept(visit, kinds, by)))
                .map(by -> new Gaps.Check(
                        purpose, kinds.kind(), by, rules.windowDays(), Optional.of(by.minusDays(rules.windowDays()))))
                .stream();
    }

    /** Whether a booked visit of another kind does as well, in the same days. */
    private boolean kept(Visit visit, Kinds kinds, LocalDate by) {
        var on = visit.start().toLocalDate();
        var last = (by.isBefore(today) ? today : by).plusDays(rules.windowDays());
        return visit.state() == Visit.State.BOOKED
                && kinds.also().contains(visit.kind().id())
                && !on.isBefore(today)
                && !on.isBefore(by.minusDays(rules.windowDays()))
                && !on.isAfter(last);
    }
}
