package org.hearthway.family;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.Child;
import org.hearthway.child.ChildData;
import org.hearthway.child.Names;
import org.hearthway.content.Provenance;
import org.hearthway.figure.internal.ShippedFigures;
import org.hearthway.program.Exercise;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.HomeWeek.Entry;
import org.hearthway.program.HomeWeek.Logged;
import org.hearthway.program.HomeWeek.Outcome;
import org.hearthway.program.HomeWeek.Planned;
import org.hearthway.program.engine.Dose;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.week.Ask;
import org.hearthway.words.Words;

/** A family in New York, a Thursday evening in March, and exercises as the tests need them. */
final class Samples {

    static final LocalDate THURSDAY = LocalDate.of(2026, 3, 12);
    static final ZoneId NEW_YORK = ZoneId.of("America/New_York");
    static final Words WORDS = new Words();

    private Samples() {}

    static Reader reader(Language language) {
        return reader(language, THURSDAY.atTime(19, 30));
    }

    static Reader reader(Language language, LocalDateTime now) {
        var viewer = new Viewer.Person(AccountId.random(), "Somebody", Set.of(Role.CAREGIVER), language, NEW_YORK);
        var data = ChildData.plain(Names.plain("Wren", "Halloway"), LocalDate.of(2019, 5, 4), Optional.of(3), 2);
        return new Reader(viewer, new Child(ChildId.random(), data, 1), at(now), WORDS);
    }

    static Instant at(LocalDateTime local) {
        return local.atZone(NEW_YORK).toInstant();
    }

    static Exercise exercise(String id) {
        return new Exercise(
                id,
                Bilingual.same(id),
                Bilingual.same("purpose"),
                List.of(Bilingual.same("step")),
                Bilingual.same("stop"),
                Exercise.Kind.STRENGTH,
                new Exercise.Traits(
                        List.of(new Exercise.Named("legs", Bilingual.same("legs"))),
                        Set.of(Exercise.Joint.HIP),
                        List.of(Exercise.Position.BACK),
                        List.of(),
                        Exercise.Help.NONE,
                        Set.of(1, 2, 3),
                        Ask.Phase.STRENGTH,
                        false),
                Set.of(),
                true,
                new Dose(2, 8, 0, 0, 1),
                List.of(),
                ShippedFigures.all().named("bridge"),
                Optional.empty(),
                Optional.empty(),
                new Provenance("common practice, no source", 1, Optional.empty(), Optional.empty()));
    }

    static ProgramLine line(String exercise, Dose dose, ProgramLine.Side side) {
        return ProgramLine.of(
                exercise, dose, side, EnumSet.allOf(DayOfWeek.class), THURSDAY.minusDays(30), Optional.empty(), "");
    }

    static Planned open(String exercise, int minutes) {
        return new Planned(
                exercise(exercise),
                line(exercise, new Dose(2, 8, 0, 0, 1), ProgramLine.Side.NONE),
                minutes,
                Optional.empty());
    }

    static Planned said(String exercise, Outcome outcome, Optional<Integer> pain) {
        var open = open(exercise, 5);
        return new Planned(open.exercise(), open.line(), open.minutes(), Optional.of(logged(exercise, outcome, pain)));
    }

    static Logged logged(String exercise, Outcome outcome, Optional<Integer> pain) {
        var reason =
                outcome == Outcome.COULD_NOT ? Optional.of(HomeWeek.Reason.TIRED) : Optional.<HomeWeek.Reason>empty();
        var entry = new Entry(
                UUID.randomUUID(),
                exercise,
                THURSDAY,
                outcome,
                reason,
                Optional.empty(),
                pain,
                pain.map(p -> HomeWeek.RatedBy.CHILD),
                "");
        return new Logged(entry, "Somebody", at(THURSDAY.atTime(7, 40)));
    }

    static DayStory day(Planned... planned) {
        return new DayStory(new HomeWeek.Day(THURSDAY, List.of(planned)));
    }
}
