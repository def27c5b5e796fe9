package org.hearthway.caseload.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.engine.Facts.GeneratorDue;
import org.hearthway.caseload.engine.Facts.OfStimulator;
import org.hearthway.caseload.engine.Facts.Warning;
import org.hearthway.stimulator.Generator;
import org.hearthway.stimulator.Reading;
import org.hearthway.stimulator.Stimulators;
import org.hearthway.stimulator.engine.Window;
import org.hearthway.visit.Visit;
import org.hearthway.visit.Visits;
import org.springframework.stereotype.Component;

/** What a child's stimulators ask for: batteries to read, generators to plan, readings that warn. */
@Component
class StimulatorFacts {

    private final Stimulators stimulators;
    private final Visits visits;
    private final NeedsContent content;

    StimulatorFacts(Stimulators stimulators, Visits visits, NeedsContent content) {
        this.stimulators = stimulators;
        this.visits = visits;
        this.content = content;
    }

    OfStimulator of(Viewer viewer, ChildId child, LocalDate today) {
        var generators = stimulators.record(viewer, child).generators();
        if (generators.isEmpty()) {
            return OfStimulator.NONE;
        }
        var coming = visits.upcoming(viewer, child);
        var due = new ArrayList<GeneratorDue>();
        generators.forEach(generator -> {
            generator
                    .nextReading()
                    .map(by -> due(GeneratorDue.Asked.READ, generator, by, content.readKinds(), coming, today))
                    .ifPresent(due::add);
            generator
                    .window()
                    .replacing()
                    .map(Window.Candidate::day)
                    .map(from ->
                            due(GeneratorDue.Asked.REPLACE, generator, from, content.replaceKinds(), coming, today))
                    .ifPresent(due::add);
        });
        return new OfStimulator(
                due, generators.stream().flatMap(one -> warnings(one).stream()).toList());
    }

    /** What is late is kept by a visit that is booked from today on within the same time. */
    private GeneratorDue due(
            GeneratorDue.Asked what,
            Generator generator,
            LocalDate day,
            Set<String> kinds,
            List<Visit> coming,
            LocalDate today) {
        var last = (day.isBefore(today) ? today : day).plusDays(content.generatorLateDays());
        return new GeneratorDue(
                what,
                generator.serial(),
                day,
                coming.stream()
                        .anyMatch(visit -> kinds.contains(visit.kind().id())
                                && !visit.start().toLocalDate().isAfter(last)));
    }

    private static List<Warning> warnings(Generator generator) {
        return generator
                .newest()
                .map(reading -> {
                    var found = new ArrayList<Warning>();
                    if (reading.data().found() == Reading.Found.OFF) {
                        found.add(warning(Warning.Shown.OFF, reading, 0));
                    }
                    if (generator.drop().isPresent()) {
                        found.add(warning(Warning.Shown.DROP, reading, 0));
                    }
                    if (!generator.unusual().isEmpty()) {
                        found.add(warning(Warning.Shown.IMPEDANCE, reading, 0));
                    }
                    if (generator.chargeLate() > 0) {
                        found.add(warning(Warning.Shown.CHARGE, reading, (int) generator.chargeLate()));
                    }
                    return List.copyOf(found);
                })
                .orElse(List.of());
    }

    private static Warning warning(Warning.Shown what, Reading reading, int count) {
        return new Warning(what, reading.revision(), reading.data().day(), reading.at(), count);
    }
}
