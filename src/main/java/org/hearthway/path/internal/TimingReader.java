package org.hearthway.path.internal;

import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthway.content.Entry;
import org.hearthway.path.engine.Template.After;
import org.hearthway.path.engine.Template.Apart;
import org.hearthway.path.engine.Template.Edge;
import org.hearthway.path.engine.Template.Length;
import org.hearthway.path.engine.Template.Repeat;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.path.engine.Template.Timing;
import org.hearthway.path.engine.ValueRules;

/** Reads when a stage is: the rules for its first day, its length, what it keeps away from, how it comes again. */
record TimingReader(List<Stage> before) {

    private static final String A_STAGE_BEFORE = "a stage that stands before this one";

    Timing read(Entry entry, StageReader.Notes notes) {
        var begins = begins(entry);
        var until = entry.maybeText("until");
        until.ifPresent(stage -> notes.stage(entry, "until", stage, true));
        var lasts = entry.has("lasts") ? Optional.of(length(entry)) : Optional.<Length>empty();
        if (until.isPresent() == lasts.isPresent()) {
            entry.wrong("lasts", "the stage has both or neither of \"lasts\" and \"until\"", "one of them");
        }
        var season = entry.maybeText("season");
        season.ifPresent(name -> notes.name(entry, "season", name));
        return new Timing(
                begins,
                lasts.orElse(Length.about(Period.ZERO)),
                until,
                entry.yes("open-days"),
                season,
                entry.yes("signal"),
                entry.yes("optional"),
                entry.maybeBlock("repeats").flatMap(block -> repeat(block, notes)),
                apart(entry.list("apart")));
    }

    private List<After> begins(Entry entry) {
        var rules = new ArrayList<After>();
        var entries = entry.list("begins");
        for (int at = 0; at < entries.size(); at++) {
            rule(entries.get(at), at == 0).ifPresent(rules::add);
        }
        if (entries.isEmpty()) {
            entry.wrong("begins", "\"begins\" is missing or empty", "at least one rule");
        }
        var optional = rules.stream()
                .allMatch(rule -> rule.stage()
                        .flatMap(this::stage)
                        .filter(s -> s.timing().optional())
                        .isPresent());
        if (!rules.isEmpty() && rules.size() == entries.size() && optional && !entry.has("optional")) {
            entry.wrong(
                    "begins",
                    "it counts only from stages that may not be on the plan",
                    "a rule that counts from a stage that always is");
        }
        return rules;
    }

    /** A rule that is wrong is told and left out, so that the others can still be held against each other. */
    private Optional<After> rule(Entry entry, boolean first) {
        var stage = entry.maybeText("after");
        var edge = entry.maybeChoice("edge", Edge.class).orElse(Edge.START);
        var usual = first ? Optional.of(entry.period("usual")) : entry.maybePeriod("usual");
        var after = new After(stage, edge, entry.period("earliest"), usual, entry.maybePeriod("latest"));
        boolean placed = standsWhereItMay(entry, stage);
        boolean right = countsFromAnEndThatIsKnown(entry, edge, stage) && placed;
        if (after.earliest().isNegative()) {
            StageReader.wrongGap(entry, "earliest", "P0D or more: a stage counts forward");
            right = false;
        }
        if (!after.isOrdered()) {
            StageReader.wrongGap(
                    entry, usual.isPresent() ? "usual" : "latest", "a gap between earliest and latest in any month");
            right = false;
        }
        entry.done();
        return right ? Optional.of(after) : Optional.empty();
    }

    private boolean standsWhereItMay(Entry entry, Optional<String> stage) {
        if (before.isEmpty() && stage.isPresent()) {
            entry.wrong("after", "the first stage counts from another", "no \"after\": it begins with the path");
            return false;
        }
        if (!before.isEmpty() && stage.isEmpty()) {
            entry.wrong("after", "\"after\" is missing", A_STAGE_BEFORE);
            return false;
        }
        boolean known = stage.map(id -> stage(id).isPresent()).orElse(true);
        if (!known) {
            entry.wrong("after", "\"after\" is " + stage.orElseThrow(), A_STAGE_BEFORE);
        }
        return known;
    }

    private boolean countsFromAnEndThatIsKnown(Entry entry, Edge edge, Optional<String> stage) {
        boolean open = edge == Edge.END
                && stage.flatMap(this::stage)
                        .filter(s -> s.timing().until().isPresent())
                        .isPresent();
        if (open) {
            entry.wrong(
                    "edge",
                    "it counts from the end of " + stage.orElseThrow() + ", which ends when another begins",
                    "the start of that other stage");
        }
        return !open;
    }

    private Optional<Stage> stage(String id) {
        return before.stream().filter(s -> s.id().equals(id)).findFirst();
    }

    /** One gap for a length that is about so long, or a block with its least, usual and most. */
    private static Length length(Entry entry) {
        if (!entry.isBlock("lasts")) {
            return Length.about(StageReader.positive(entry, "lasts").orElse(Period.ZERO));
        }
        var block = entry.block("lasts");
        var length = new Length(
                StageReader.positive(block, "least").orElse(Period.ZERO),
                block.period("usual"),
                StageReader.positive(block, "most"));
        if (!isOrdered(length)) {
            StageReader.wrongGap(block, "usual", "a length between least and most in any month");
            length = Length.about(Period.ZERO);
        }
        block.done();
        return length;
    }

    private static boolean isOrdered(Length length) {
        return new After(Optional.empty(), Edge.START, length.least(), Optional.of(length.usual()), length.most())
                .isOrdered();
    }

    private static Optional<Repeat> repeat(Entry block, StageReader.Notes notes) {
        var every = block.period("every");
        if (every.isZero() || every.isNegative()) {
            StageReader.wrongGap(block, "every", "more than P0D");
        }
        var until = block.maybeText("until");
        until.ifPresent(stage -> notes.stage(block, "until", stage, true));
        var times = block.maybeInteger("times", 2, ValueRules.MOST_TIMES);
        if (until.isPresent() == times.isPresent()) {
            block.wrong("times", "the repeat has both or neither of \"times\" and \"until\"", "one of them");
        }
        block.done();
        return every.isZero() || every.isNegative() ? Optional.empty() : Optional.of(new Repeat(every, times, until));
    }

    private List<Apart> apart(List<Entry> entries) {
        var all = new ArrayList<Apart>();
        for (var entry : entries) {
            var from = entry.text("from");
            if (stage(from).isEmpty()) {
                entry.wrong("from", "\"from\" is " + from, A_STAGE_BEFORE);
            }
            all.add(new Apart(from, entry.integer("days", 1, ValueRules.MOST_DAYS_APART)));
            entry.done();
        }
        return all;
    }
}
