package org.hearthway.path.engine;

import java.time.LocalDate;
import org.hearthway.path.engine.Template.Stage;

/** A rule about a plan's dates, as data: why a date lies where it does, or what it clashes with. */
public sealed interface Cause {

    /** The stage that the rule is about. */
    Stage stage();

    /** A stage begins so long after another: rule number {@code at} of it, from 0. */
    record Begins(Stage stage, int at, Template.After rule) implements Cause {}

    /** A stage lasts so long. */
    record Lasts(Stage stage) implements Cause {}

    /** A stage does not begin before the one in front of it. */
    record InOrder(Stage stage, Stage before) implements Cause {}

    /** A stage begins on a day on which the clinic is open and the family can come. */
    record OpenDay(Stage stage) implements Cause {}

    /** A stage begins within a season. */
    record InSeason(Stage stage, String season) implements Cause {}

    /** Somebody gave a stage its date. */
    record Dated(Stage stage, LocalDate day, Plan.Origin origin) implements Cause {}

    /** A stage has not happened yet: it lies on this day or later. */
    record NotYet(Stage stage, LocalDate first) implements Cause {}

    /** A visit lies so long after its stage's first day. */
    record Asked(Stage stage, Template.VisitNeed visit) implements Cause {}

    /** A visit lies on a day on which its kind is done and the family can come. */
    record VisitDay(Stage stage, Template.VisitNeed visit) implements Cause {}

    /** A stage keeps away from another. */
    record KeptApart(Stage stage, Stage other, int days) implements Cause {}
}
