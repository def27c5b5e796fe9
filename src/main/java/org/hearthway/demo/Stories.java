package org.hearthway.demo;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.hearthway.child.Helpers.Kind;
import org.hearthway.child.Homes.Authority;
import org.hearthway.child.Households.Reach;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.hearthway.equipment.Item;
import org.hearthway.equipment.Place;
import org.hearthway.medicine.Medicines.How;
import org.hearthway.medicine.ToxinSessions;
import org.hearthway.medicine.engine.ToxinUnits;
import org.hearthway.program.HomeWeek.Outcome;
import org.hearthway.program.HomeWeek.RatedBy;
import org.hearthway.program.HomeWeek.Reason;
import org.hearthway.program.engine.Dose;
import org.hearthway.program.engine.Load;
import org.hearthway.program.engine.ProgramLine.Side;
import org.hearthway.program.engine.Progression;
import org.hearthway.stimulator.engine.Charge;
import org.hearthway.surveillance.engine.Watched;
import org.springframework.stereotype.Component;

/** The children of the demo clinic, a file each in {@code content/demo/children}. Read everywhere, used in the demo only. */
@Component
class Stories implements ContentKind {

    private static final int YEARS = 3_700;

    /** A weekend with holidays before and after it. */
    private static final int CLOSED_AT_MOST = 5;

    private final List<Story> all = new ArrayList<>();

    @Override
    public String place() {
        return "demo/children";
    }

    List<Story> all() {
        return all;
    }

    @Override
    public void read(Entry file) {
        all.add(new Story(
                file.text("used-name"),
                file.text("family-name"),
                file.period("age"),
                file.maybeInteger("gmfcs", 1, 5),
                file.integer("skin-tone", 1, 4),
                file.integer("entered", -YEARS, -1),
                each(file, "caregivers", Stories::cares),
                Stream.of("path", "beside")
                        .flatMap(key -> file.maybeBlock(key).stream())
                        .map(Stories::way)
                        .toList(),
                each(file, "fills", Stories::filled),
                file.maybeBlock("implanted").map(Stories::implanted),
                file.maybeBlock("stimulator").map(Stories::stimulated),
                each(file, "programs", Stories::version),
                each(file, "log", Stories::kept),
                each(file, "said", Stories::said),
                each(file, "visits", Stories::seen),
                each(file, "told", Stories::told),
                each(file, "helpers", Stories::helps),
                each(file, "tasks", Stories::asked),
                each(file, "equipment", Stories::thing),
                each(file, "casts", Stories::cast),
                each(file, "checks", Stories::watch),
                each(file, "medicines", Stories::taken),
                each(file, "toxin", Stories::shots),
                each(file, "facts", Stories::laid),
                each(file, "decided", Stories::chosen),
                file.maybeBlock("week").map(Stories::week)));
    }

    private static <T> List<T> each(Entry entry, String key, java.util.function.Function<Entry, T> read) {
        return entry.list(key).stream()
                .map(one -> {
                    var made = read.apply(one);
                    one.done();
                    return made;
                })
                .toList();
    }

    private static Story.Cares cares(Entry one) {
        return new Story.Cares(
                one.text("person"),
                one.choice("reach", Reach.class),
                one.maybeBlock("home").map(Stories::lives));
    }

    private static Story.Lives lives(Entry home) {
        var lives = new Story.Lives(
                home.text("relation"),
                home.choice("authority", Authority.class),
                home.text("address"),
                Set.copyOf(home.weekdays("nights")),
                Set.copyOf(home.weekdays("other-nights")),
                home.yes("turns"),
                home.yes("kept-apart"),
                home.maybeText("note").orElse(""));
        home.done();
        return lives;
    }

    private static Story.Helps helps(Entry helper) {
        return new Story.Helps(
                helper.text("person"),
                helper.choice("kind", Kind.class),
                helper.integer("asked", -300, -1),
                helper.integer("last-day", 1, 300),
                helper.text("consent"));
    }

    private static Story.Way way(Entry path) {
        var way = new Story.Way(
                path.text("pathway"),
                path.integer("begun", -YEARS, 0),
                path.text("reason"),
                path.text("by"),
                each(
                        path,
                        "fixed",
                        one -> new Story.Fixed(
                                one.text("stage"),
                                one.integer("day", -YEARS, 400),
                                one.integer("done", -YEARS, -1),
                                one.text("reason"))));
        path.done();
        return way;
    }

    private static Story.Filled filled(Entry fill) {
        return new Story.Filled(
                fill.integer("day", -YEARS, -1),
                fill.integer("alarm", -YEARS, 400),
                fill.integer("margin-days", 3, 14),
                amount(fill, "strength"),
                amount(fill, "injected"),
                fill.maybeText("found").map(BigDecimal::new).orElse(BigDecimal.ZERO),
                fill.text("by"),
                fill.maybeText("checked"));
    }

    private static BigDecimal amount(Entry entry, String key) {
        return new BigDecimal(entry.text(key));
    }

    private static Story.Implanted implanted(Entry pump) {
        var made = new Story.Implanted(
                pump.integer("day", -YEARS, -1),
                pump.text("pump"),
                pump.text("catheter"),
                pump.integer("reservoir", 5, 60),
                pump.maybeText("catheter-length").map(BigDecimal::new),
                pump.text("by"),
                pump.text("checked"),
                each(
                        pump,
                        "steps",
                        step -> new Story.Changed(
                                step.integer("day", -YEARS, -1),
                                step.integer("percent", -50, 50),
                                step.text("reason"),
                                step.text("by"),
                                step.maybeText("checked"))),
                pump.maybeBlock("plan").map(plan -> plan(plan, "catheter", "withdrawal")));
        pump.done();
        return made;
    }

    private static Story.Stimulated stimulated(Entry stimulator) {
        var made = new Story.Stimulated(
                stimulator.integer("day", -YEARS, -1),
                stimulator.text("generator"),
                stimulator.texts("leads"),
                stimulator.text("by"),
                plan(stimulator.block("plan"), "leads", "storm"),
                stimulator.choice("charge", Charge.class),
                stimulator.maybeInteger("life", 1, 30),
                each(stimulator, "readings", Stories::copied));
        stimulator.done();
        return made;
    }

    private static Story.Reading copied(Entry reading) {
        return new Story.Reading(
                reading.integer("day", -YEARS, -1),
                reading.integer("battery", 0, 100),
                reading.maybeInteger("left", 1, 255),
                reading.maybeInteger("right", 1, 255),
                reading.maybeInteger("every", 1, 31),
                reading.maybeInteger("charged", -YEARS, -1),
                reading.maybeInteger("estimate", -YEARS, YEARS),
                reading.maybeText("note").orElse(""),
                reading.text("by"),
                reading.maybeText("checked"));
    }

    private static Story.Plan plan(Entry plan, String lies, String words) {
        var made = new Story.Plan(plan.text("by"), plan.text("line"), plan.text(lies), plan.text(words));
        plan.done();
        return made;
    }

    private static Story.Version version(Entry version) {
        return new Story.Version(
                version.integer("day", -YEARS, -1),
                version.text("by"),
                version.text("reason"),
                each(version, "lines", Stories::line));
    }

    private static Story.Line line(Entry line) {
        var days = line.weekdays("days");
        return new Story.Line(
                line.text("exercise"),
                line.maybeBlock("dose").map(Stories::dose),
                line.maybeChoice("side", Side.class).orElse(Side.NONE),
                days.isEmpty() ? EnumSet.allOf(DayOfWeek.class) : Set.copyOf(days),
                line.maybeText("note").orElse(""),
                line.maybeBlock("more").map(Stories::more));
    }

    private static Progression more(Entry more) {
        var made = new Progression(
                more.integer("days", 1, 28),
                more.integer("effort-under", 1, 10),
                more.integer("pain-under", 1, 10),
                dose(more.block("dose")),
                new Load.Body());
        more.done();
        return made;
    }

    private static Story.Week week(Entry week) {
        var made = new Story.Week(
                week.integer("day", -300, -1),
                week.text("by"),
                each(
                        week,
                        "times",
                        one -> new Story.Week.Timed(
                                Set.copyOf(one.weekdays("days")),
                                time(one, "at"),
                                one.integer("minutes", 5, 240),
                                one.texts("helpers"))),
                each(
                        week,
                        "busy",
                        one -> new Story.Week.Blocked(
                                Set.copyOf(one.weekdays("days")),
                                time(one, "from"),
                                time(one, "until"),
                                one.text("what"))),
                week.maybeInteger("most", 5, 240));
        week.done();
        return made;
    }

    private static Dose dose(Entry dose) {
        var made = new Dose(
                dose.maybeInteger("sets", 1, 10).orElse(1),
                dose.maybeInteger("repetitions", 1, 100).orElse(0),
                dose.maybeInteger("hold", 1, 600).orElse(0),
                dose.maybeInteger("minutes", 1, 240).orElse(0),
                dose.maybeInteger("times-a-day", 1, 6).orElse(1));
        dose.done();
        return made;
    }

    private static Story.Kept kept(Entry kept) {
        var marks = kept.text("marks");
        return new Story.Kept(
                kept.text("exercise"),
                kept.text("by"),
                marks,
                kept.maybeInteger("effort", 0, 10),
                kept.maybeInteger("pain", 0, 10),
                row(kept, "efforts", marks),
                row(kept, "pains", marks),
                kept.maybeChoice("rated-by", RatedBy.class).orElse(RatedBy.CHILD));
    }

    /** A digit for each mark, a point for a day that nobody rated. */
    private static String row(Entry kept, String key, String marks) {
        var row = kept.maybeText(key).orElse("");
        if (!row.isEmpty() && (row.length() != marks.length() || !row.matches("[0-9.]*"))) {
            kept.wrong(
                    key,
                    "\"" + key + "\" is " + row,
                    "a digit or a point for each mark, " + marks.length() + " in all, in quotes");
        }
        return row;
    }

    private static Story.Said said(Entry said) {
        return new Story.Said(
                said.text("exercise"),
                said.text("by"),
                said.integer("day", -31, -1),
                said.choice("outcome", Outcome.class),
                said.maybeChoice("reason", Reason.class),
                said.maybeInteger("effort", 0, 10),
                said.maybeInteger("pain", 0, 10),
                said.maybeText("note").orElse(""));
    }

    private static Story.Seen seen(Entry visit) {
        var day = visit.integer("day", -YEARS, 400);
        // a past visit may move to an earlier day when the clinic was closed
        var latestBooking = Math.min(-1, day < 0 ? day - CLOSED_AT_MOST : -1);
        return new Story.Seen(
                visit.text("kind"),
                day,
                time(visit),
                visit.maybeText("place").orElse(""),
                visit.maybeText("purpose"),
                visit.integer("booked", -YEARS, latestBooking),
                visit.maybeChoice("answered", Story.Answered.class).orElse(Story.Answered.NOTHING),
                visit.maybeText("by").orElse(""),
                visit.maybeText("wish").orElse(""),
                visit.maybeBlock("other").map(Stories::other),
                visit.maybeChoice("came", Story.Came.class).orElse(Story.Came.NOT_NOTED));
    }

    private static Story.Other other(Entry other) {
        var made = new Story.Other(other.text("by"), other.text("wish"));
        other.done();
        return made;
    }

    private static LocalTime time(Entry entry) {
        return time(entry, "at");
    }

    private static LocalTime time(Entry entry, String key) {
        var text = entry.text(key);
        try {
            return LocalTime.parse(text);
        } catch (DateTimeParseException notATime) {
            entry.wrong(key, "\"" + key + "\" is " + text, "a time such as 09:30, in quotes");
            return LocalTime.NOON;
        }
    }

    private static Story.Asked asked(Entry task) {
        var day = task.integer("day", -YEARS, -1);
        return new Story.Asked(
                day,
                task.text("by"),
                task.text("to"),
                task.bilingual("says"),
                task.integer("due", day + CLOSED_AT_MOST, 400),
                task.maybeInteger("done", day, -1).orElse(0),
                task.maybeText("done-by").orElse(""));
    }

    private static Story.Told told(Entry told) {
        return new Story.Told(
                told.integer("minutes-ago", 0, 60_000),
                told.text("by"),
                told.texts("signs"),
                told.yes("called"),
                told.maybeText("note").orElse(""),
                told.yes("read"),
                told.yes("team-only"));
    }

    private static Story.Thing thing(Entry thing) {
        return new Story.Thing(
                thing.text("kind"),
                thing.maybeChoice("place", Place.class),
                thing.maybeChoice("side", Place.Side.class),
                thing.integer("day", -YEARS, -1),
                thing.text("by"),
                thing.maybeInteger("by-day", 0, 24),
                thing.maybeInteger("by-night", 0, 24),
                thing.maybeText("schedule").orElse(""),
                thing.maybeText("build-up").orElse(""),
                thing.maybeInteger("lent-until", 1, YEARS),
                each(
                        thing,
                        "looks",
                        look -> new Story.Look(
                                look.choice("what", Item.What.class),
                                look.integer("day", -YEARS, -1),
                                look.choice("outcome", Item.Outcome.class),
                                look.maybeText("note").orElse(""))));
    }

    private static Story.Cast cast(Entry cast) {
        return new Story.Cast(
                cast.choice("place", Place.class),
                cast.choice("side", Place.Side.class),
                cast.integer("day", -YEARS, -1),
                cast.integer("every", 1, 60),
                cast.integer("last-off", 1, 60),
                cast.text("by"),
                each(
                        cast,
                        "worn",
                        worn -> new Story.Worn(
                                worn.integer("on", -YEARS, -1),
                                worn.maybeInteger("off", -YEARS, -1),
                                worn.maybeInteger("degrees", -90, 180),
                                worn.maybeText("skin").orElse(""))));
    }

    private static Story.Watch watch(Entry check) {
        return new Story.Watch(
                check.choice("watched", Watched.class),
                check.integer("day", -YEARS, -1),
                check.text("who"),
                check.maybeInteger("left", 0, 100),
                check.maybeInteger("right", 0, 100),
                check.maybeInteger("cobb", 0, 180),
                check.yes("stable"),
                check.text("by"));
    }

    private static Story.Taken taken(Entry medicine) {
        return new Story.Taken(
                medicine.integer("day", -YEARS, -1),
                medicine.text("name"),
                medicine.maybeText("form").orElse(""),
                medicine.choice("how", How.class),
                medicine.text("dose"),
                medicine.bilingual("for"),
                medicine.text("prescriber"),
                medicine.text("by"),
                medicine.maybeText("checked"),
                medicine.maybeBlock("change").map(Stories::redosed),
                medicine.maybeBlock("taper").map(Stories::stepped));
    }

    private static Story.Redosed redosed(Entry change) {
        var made = new Story.Redosed(change.integer("day", -YEARS, -1), change.text("dose"), change.text("by"));
        change.done();
        return made;
    }

    private static Story.Stepped stepped(Entry taper) {
        var made = new Story.Stepped(
                taper.integer("day", -300, -1),
                taper.text("by"),
                taper.maybeText("checked"),
                each(taper, "steps", step -> new Story.Step(step.integer("from", -300, 400), step.text("dose"))),
                taper.maybeInteger("stops", -300, 400));
        taper.done();
        return made;
    }

    private static Story.Laid laid(Entry laid) {
        var choices = new LinkedHashMap<String, List<String>>();
        var known = laid.block("known");
        known.keys().forEach(fact -> choices.put(fact, List.of(known.text(fact).split(" "))));
        known.done();
        var notes = new LinkedHashMap<String, String>();
        laid.maybeBlock("notes").ifPresent(said -> {
            said.keys().forEach(fact -> notes.put(fact, said.text(fact)));
            said.done();
        });
        return new Story.Laid(laid.integer("day", -YEARS, -1), laid.text("by"), choices, notes);
    }

    private static Story.Chosen chosen(Entry decision) {
        return new Story.Chosen(
                decision.integer("day", -YEARS, -1),
                decision.text("by"),
                decision.maybeText("path"),
                decision.text("present"),
                decision.text("reason"));
    }

    private static Story.Shots shots(Entry session) {
        return new Story.Shots(
                session.integer("day", -YEARS, -1),
                session.text("preparation"),
                session.text("given-by"),
                session.text("by"),
                each(
                        session,
                        "places",
                        place -> new Story.Shot(
                                place.text("muscle"),
                                place.choice("side", ToxinSessions.Side.class),
                                place.integer("units", 1, ToxinUnits.MOST))));
    }
}
