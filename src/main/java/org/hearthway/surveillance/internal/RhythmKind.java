package org.hearthway.surveillance.internal;

import java.time.Period;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.hearthway.content.FamilyText;
import org.hearthway.content.Provenance;
import org.hearthway.content.SignOff;
import org.hearthway.surveillance.Surveillance.Matter;
import org.hearthway.surveillance.Surveillance.Rule;
import org.hearthway.surveillance.engine.Rhythm;
import org.hearthway.surveillance.engine.Step;
import org.hearthway.surveillance.engine.Watched;
import org.springframework.stereotype.Component;

/** The rhythms in {@code content/surveillance}: a file for hips and one for the spine, a rule for each level. */
@Component
class RhythmKind implements ContentKind {

    private static final int HIGHEST_LEVEL = 5;
    private static final int HUNDRED = 100;
    private static final int MONTHS = 60;

    /** A level's rule and the rhythm it makes. */
    record Level(Rule rule, Rhythm rhythm) {}

    /** A file. */
    record Read(Matter matter, Map<Integer, Level> levels, Provenance provenance) {

        SignOff.Item item() {
            return new SignOff.Item("surveillance", matter.watched().name(), provenance.version());
        }
    }

    private final Map<Watched, Read> files = new EnumMap<>(Watched.class);

    @Override
    public String place() {
        return "surveillance";
    }

    @Override
    public void read(Entry file) {
        var watched = file.choice("watched", Watched.class);
        var early = file.period("early");
        var displaced = file.maybeBlock("displaced");
        var from = displaced.map(block -> block.integer("from", 1, HUNDRED));
        var definition = displaced.map(block -> block.text("by")).orElse("");
        displaced.ifPresent(Entry::done);
        var levels = new HashMap<Integer, Level>();
        for (var block : file.list("levels")) {
            var level = block.integer("level", 1, HIGHEST_LEVEL);
            var rule = new Rule(block.bilingual("says"), block.text("source"));
            var steps = block.list("steps").stream().map(RhythmKind::step).toList();
            block.done();
            if (levels.put(level, new Level(rule, new Rhythm(steps, early))) != null) {
                block.wrong("level", "level " + level + " stands twice", "each level once");
            }
            if (isOutOfOrder(steps)) {
                block.wrong("steps", "a step stands behind one that repeats", "what repeats at the end");
            }
        }
        var matter = new Matter(
                watched, file.bilingual("name"), file.text("visit"), from, definition, file.bilinguals("family"));
        if (files.put(watched, new Read(matter, Map.copyOf(levels), file.provenance())) != null) {
            file.wrong("watched", "another file is for " + watched, "one file for each");
        }
    }

    private static boolean isOutOfOrder(List<Step> steps) {
        var repeats = false;
        for (var step : steps) {
            if (repeats && !(step instanceof Step.Every)) {
                return true;
            }
            repeats |= step instanceof Step.Every;
        }
        return false;
    }

    private static Step step(Entry block) {
        var step = one(block);
        block.done();
        return step;
    }

    private static Step one(Entry block) {
        if (block.has("every-months")) {
            return new Step.Every(
                    block.integer("every-months", 1, MONTHS), block.maybePeriod("for"), block.yes("until-stable"));
        }
        if (block.has("after-first")) {
            return new Step.AfterFirst(block.period("after-first"));
        }
        var ages = block.block(block.has("first") ? "first" : "age");
        var from = ages.period("from");
        var until = ages.period("until");
        ages.done();
        if (isLater(from, until)) {
            ages.wrong("until", "\"until\" lies before \"from\"", "the same age or a later one");
        }
        return block.has("first") ? new Step.First(from, until) : new Step.Age(from, until);
    }

    private static boolean isLater(Period one, Period other) {
        return one.toTotalMonths() > other.toTotalMonths();
    }

    @Override
    public List<FamilyText> familyTexts() {
        return files.values().stream()
                .map(read -> new FamilyText(
                        read.item(), read.matter().name(), read.matter().says(), read.provenance()))
                .toList();
    }

    /** Hips, then spine. */
    List<Read> all() {
        return List.copyOf(files.values());
    }

    /** The matter as families may read it: in the clinic's words, and without words it has not accepted. */
    static Matter told(Read read, boolean shown, Map<Integer, Bilingual> own) {
        var was = read.matter();
        var says = new ArrayList<Bilingual>();
        for (var place = 0; shown && place < was.says().size(); place++) {
            says.add(own.getOrDefault(place + 1, was.says().get(place)));
        }
        return new Matter(
                was.watched(),
                own.getOrDefault(0, was.name()),
                was.visitKind(),
                was.displacedFrom(),
                was.definition(),
                says);
    }

    Optional<Read> find(Watched watched) {
        return Optional.ofNullable(files.get(watched));
    }
}
