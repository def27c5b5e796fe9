package org.hearthway.path.internal;

import java.time.Period;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.hearthway.content.Entry;
import org.hearthway.path.engine.Template.DeviceFate;
import org.hearthway.path.engine.Template.DeviceNote;
import org.hearthway.path.engine.Template.Duties;
import org.hearthway.path.engine.Template.FamilyTask;
import org.hearthway.path.engine.Template.Outcome;
import org.hearthway.path.engine.Template.Precaution;
import org.hearthway.path.engine.Template.Responsible;
import org.hearthway.path.engine.Template.StaffTask;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.path.engine.Template.VisitNeed;
import org.hearthway.path.engine.ValueRules;

/** Reads the stages of a path. What lies in other content is noted, to be looked for when all of it was read. */
final class StageReader {

    private final List<Asked> asked;
    private final List<Link> links;

    /** A name from other content, and where it stands. */
    record Asked(Entry at, String key, String name) {}

    /**
     * A stage of the same path that is named before all of them are read, and where it stands.
     *
     * @param from the stage that names it
     * @param behind whether it must stand behind that one; otherwise it is that one or stands before it
     */
    record Link(Entry at, String key, String stage, String from, boolean behind) {}

    /** Takes the lists that names from other content, and names of other stages, are added to. */
    StageReader(List<Asked> asked, List<Link> links) {
        this.asked = asked;
        this.links = links;
    }

    Stage read(Entry entry, List<Stage> before) {
        var id = entry.text("id");
        if (before.stream().anyMatch(s -> s.id().equals(id))) {
            entry.wrong("id", "\"" + id + "\" stands twice", "each stage once");
        }
        var stage = new Stage(
                id,
                entry.bilingual("name"),
                entry.bilingual("says"),
                entry.bilingual("why"),
                entry.text("source"),
                entry.choice("who", Responsible.class),
                new TimingReader(before).read(entry, notes(id)),
                duties(entry),
                visits(entry.list("visits"), notes(id)),
                precautions(entry.list("precautions")),
                outcomes(entry.list("outcomes"), notes(id)),
                signs(entry));
        entry.done();
        return stage;
    }

    private void ask(Entry at, String key, String name) {
        asked.add(new Asked(at, key, name));
    }

    private List<String> signs(Entry entry) {
        var signs = entry.texts("signs");
        signs.forEach(sign -> ask(entry, "signs", sign));
        return signs;
    }

    private static Duties duties(Entry entry) {
        var family = new ArrayList<FamilyTask>();
        for (var task : entry.list("tasks")) {
            family.add(new FamilyTask(task.bilingual("does"), due(task)));
            task.done();
        }
        var staff = new ArrayList<StaffTask>();
        for (var task : entry.list("staff-tasks")) {
            staff.add(new StaffTask(task.bilingual("does"), task.choice("who", Responsible.class), due(task)));
            task.done();
        }
        return new Duties(family, staff, entry.bilinguals("entry"), entry.bilinguals("exit"));
    }

    private static Optional<Period> due(Entry task) {
        var due = task.maybePeriod("due");
        due.filter(gap -> !ValueRules.isDue(gap)).ifPresent(wrong -> wrongGap(task, "due", "P-1Y to P20Y"));
        return due;
    }

    private Notes notes(String from) {
        return new Notes() {
            @Override
            public void name(Entry at, String key, String name) {
                ask(at, key, name);
            }

            @Override
            public void stage(Entry at, String key, String stage, boolean behind) {
                links.add(new Link(at, key, stage, from, behind));
            }
        };
    }

    private List<VisitNeed> visits(List<Entry> entries, Notes notes) {
        var visits = new ArrayList<VisitNeed>();
        var ids = new HashSet<String>();
        for (var entry : entries) {
            var id = entry.text("id");
            if (!ids.add(id)) {
                entry.wrong("id", "\"" + id + "\" stands twice", "each visit once in a stage");
            }
            var kind = entry.text("kind");
            ask(entry, "kind", kind);
            var visit = visit(entry, id, kind, notes);
            if (visits.stream().noneMatch(other -> other.id().equals(id))) {
                visits.add(visit);
            }
            entry.done();
        }
        return visits;
    }

    private static VisitNeed visit(Entry entry, String id, String kind, Notes notes) {
        var within = entry.period("within");
        if (within.isNegative()) {
            wrongGap(entry, "within", "P0D or more");
            within = Period.ZERO;
        }
        var every = entry.maybePeriod("every");
        if (every.filter(gap -> gap.isZero() || gap.isNegative()).isPresent()) {
            wrongGap(entry, "every", "more than P0D");
            every = Optional.of(Period.ofYears(1));
        }
        var until = entry.maybeText("until");
        until.ifPresent(stage -> notes.stage(entry, "until", stage, true));
        var times = every.isPresent() && until.isEmpty() ? entry.integer("times", 2, ValueRules.MOST_TIMES) : 1;
        return new VisitNeed(id, kind, entry.period("after"), within, every, times, until, entry.maybeText("source"));
    }

    private List<Precaution> precautions(List<Entry> entries) {
        var precautions = new ArrayList<Precaution>();
        for (var entry : entries) {
            var from = positive(entry, "from").orElseGet(() -> entry.period("from"));
            var until = entry.maybePeriod("until");
            if (until.filter(end -> !ValueRules.isLonger(end, from)).isPresent()) {
                wrongGap(entry, "until", "a gap longer than \"from\"");
            }
            var tag = entry.text("tag");
            ask(entry, "tag", tag);
            precautions.add(new Precaution(
                    tag, entry.yes("forbids"), from, until, entry.bilingual("says"), entry.text("source")));
            entry.done();
        }
        return precautions;
    }

    private static List<Outcome> outcomes(List<Entry> entries, Notes notes) {
        var outcomes = new ArrayList<Outcome>();
        var ids = new HashSet<String>();
        for (var entry : entries) {
            var id = entry.text("id");
            if (!ids.add(id)) {
                entry.wrong("id", "\"" + id + "\" stands twice", "each outcome once in a stage");
            }
            var opens = entry.texts("opens");
            var skips = entry.texts("skips");
            var back = entry.maybeText("returns-to");
            opens.forEach(stage -> notes.stage(entry, "opens", stage, true));
            skips.forEach(stage -> notes.stage(entry, "skips", stage, true));
            back.ifPresent(stage -> notes.stage(entry, "returns-to", stage, false));
            outcomes.add(new Outcome(
                    id,
                    entry.bilingual("name"),
                    entry.maybeBilingual("tells"),
                    new HashSet<>(opens),
                    new HashSet<>(skips),
                    entry.yes("ends-path"),
                    back,
                    entry.maybeBlock("device").map(device -> device(device, notes))));
            entry.done();
        }
        return outcomes;
    }

    private static DeviceNote device(Entry entry, Notes notes) {
        var at = entry.maybeText("at");
        at.ifPresent(stage -> notes.stage(entry, "at", stage, false));
        var note = new DeviceNote(entry.choice("is", DeviceFate.class), at);
        entry.done();
        return note;
    }

    /** Names a gap as it stands in the file, where six weeks are not yet 42 days. */
    static void wrongGap(Entry entry, String key, String expected) {
        entry.wrong(key, "\"" + key + "\" is " + entry.text(key), expected);
    }

    /** Notes what can be looked for only when all was read. */
    interface Notes {

        /** A name that other content has to know. */
        void name(Entry at, String key, String name);

        /** A stage of the same path; behind this one, or else this one or one before it. */
        void stage(Entry at, String key, String stage, boolean behind);
    }

    static Optional<Period> positive(Entry entry, String key) {
        var gap = entry.maybePeriod(key);
        gap.filter(Period::isNegative).ifPresent(wrong -> wrongGap(entry, key, "P0D or more"));
        return gap;
    }
}
