package org.hearthway.task.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.hearthway.content.FamilyText;
import org.hearthway.content.Provenance;
import org.hearthway.content.SignOff;
import org.hearthway.path.engine.Plan;
import org.hearthway.task.PlainWords;
import org.hearthway.task.Tasks;
import org.hearthway.task.Tasks.Ready;
import org.hearthway.task.engine.ProposedDay;
import org.springframework.stereotype.Component;

/** The ready texts in {@code content/tasks}, and those that an open stage of a path brings with it. */
@Component
class ReadyTexts implements ContentKind {

    private static final int MOST_DAYS = 365;

    /** For whom a text is usually meant. */
    private enum To {
        FAMILY,
        COORDINATOR,
        NURSE,
        THERAPIST,
        PHYSICIAN;

        Optional<Role> role() {
            return this == FAMILY ? Optional.empty() : Optional.of(Role.valueOf(name()));
        }
    }

    /** What a text of the team is given after, by itself. */
    enum After {
        /** The dose of a pump was changed. */
        DOSE_CHANGE
    }

    /** A text that is given by itself: to whom, what, and within how many days. */
    record ByItself(Role to, Bilingual says, int days) {}

    private record Text(String id, To to, Bilingual says, int days, Optional<After> after, Provenance provenance) {

        SignOff.Item item() {
            return new SignOff.Item("tasks", id, provenance.version());
        }
    }

    private final Map<String, Text> texts = new LinkedHashMap<>();
    private final SignOff signOff;

    ReadyTexts(@org.springframework.context.annotation.Lazy SignOff signOff) {
        this.signOff = signOff;
    }

    @Override
    public String place() {
        return "tasks";
    }

    @Override
    public void read(Entry file) {
        for (var block : file.list("texts")) {
            var text = new Text(
                    block.text("id"),
                    block.choice("to", To.class),
                    block.bilingual("says"),
                    block.integer("days", 1, MOST_DAYS),
                    block.maybeChoice("after", After.class),
                    block.provenance());
            block.done();
            checkWords(block, text);
            if (text.after().isPresent() && text.to() == To.FAMILY) {
                block.wrong("after", "a family is asked by a person", "a text for a role of the team");
            }
            if (texts.putIfAbsent(text.id(), text) != null) {
                block.wrong("id", "a text \"" + text.id() + "\" stands already", "an identifier of its own");
            }
        }
    }

    /** What is given by itself after something. */
    List<ByItself> after(After what) {
        return texts.values().stream()
                .filter(text -> text.after().filter(what::equals).isPresent())
                .flatMap(text -> text.to().role().stream().map(role -> new ByItself(role, text.says(), text.days())))
                .toList();
    }

    private static void checkWords(Entry block, Text text) {
        var en = text.says().en();
        var es = text.says().es();
        if (en.length() > Tasks.LONGEST || es.length() > Tasks.LONGEST) {
            block.wrong("says", "\"says\" is too long", "at most " + Tasks.LONGEST + " characters in each language");
        }
        if (text.to() != To.FAMILY) {
            return;
        }
        if (PlainWords.areHard(Language.EN, en)) {
            block.wrong("says", "the English text is hard to read", "grade " + PlainWords.HARDEST_GRADE + " or lower");
        }
        if (PlainWords.areHard(Language.ES, es)) {
            block.wrong(
                    "says",
                    "the Spanish text is hard to read",
                    "a reading ease of " + PlainWords.LEAST_EASE + " or more");
        }
    }

    @Override
    public List<FamilyText> familyTexts() {
        return ofFamilies().stream()
                .map(text -> new FamilyText(text.item(), text.says(), List.of(), text.provenance()))
                .toList();
    }

    private List<Text> ofFamilies() {
        return texts.values().stream().filter(text -> text.to() == To.FAMILY).toList();
    }

    /** Those of the paths first: they are of today. */
    List<Ready> ready(List<Plan> plans, LocalDate today) {
        return Stream.concat(plans.stream().flatMap(known -> ofPath(known, today)), ofContent(today))
                .toList();
    }

    private Stream<Ready> ofContent(LocalDate today) {
        var shown = signOff.shownAmong(ofFamilies().stream().map(Text::item).collect(Collectors.toList()));
        return texts.values().stream()
                .filter(text -> text.to() != To.FAMILY || shown.contains(text.item()))
                .map(text -> new Ready(
                        text.id(),
                        text.to().role(),
                        signOff.ownWords(text.item()).getOrDefault(0, text.says()),
                        Optional.empty(),
                        today.plusDays(text.days())));
    }

    private Stream<Ready> ofPath(Plan plan, LocalDate today) {
        var template = plan.template();
        if (!signOff.isShown(new SignOff.Item("paths", template.id(), template.version()))) {
            return Stream.empty();
        }
        var ready = new ArrayList<Ready>();
        plan.now()
                .ifPresent(now -> IntStream.range(
                                0, now.stage().duties().family().size())
                        .mapToObj(place -> new Ready(
                                StagesOfTasks.name(plan, now) + "/" + place,
                                Optional.empty(),
                                now.stage().duties().family().get(place).does(),
                                Optional.of(StagesOfTasks.name(plan, now)),
                                ProposedDay.ofStage(now.end(), today)))
                        .forEach(ready::add));
        return ready.stream();
    }
}
