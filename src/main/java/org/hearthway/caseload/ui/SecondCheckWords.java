package org.hearthway.caseload.ui;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hearthway.base.AccountId;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.Needs.Item;
import org.hearthway.caseload.engine.Facts.Unconfirmed.What;
import org.hearthway.caseload.engine.Rule;
import org.hearthway.medicine.Medicines;
import org.hearthway.medicine.Medicines.Medicine;
import org.hearthway.medicine.Tapers;
import org.hearthway.pump.Pumps;
import org.hearthway.stimulator.Stimulators;
import org.hearthway.task.TaskWords;
import org.hearthway.words.Words;
import org.springframework.stereotype.Component;

/** Says what waits for its second check: since when, who wrote it, and what is kept back until then. No dose. */
@Component
class SecondCheckWords {

    private final Words words;
    private final Medicines medicines;
    private final Tapers tapers;
    private final Pumps pumps;
    private final Stimulators stimulators;
    private final TaskWords people;

    SecondCheckWords(
            Words words, Medicines medicines, Tapers tapers, Pumps pumps, Stimulators stimulators, TaskWords people) {
        this.words = words;
        this.medicines = medicines;
        this.tapers = tapers;
        this.pumps = pumps;
        this.stimulators = stimulators;
        this.people = people;
    }

    /** The name of what waits and who wrote it; nobody once something newer stands there. */
    private record About(String name, Optional<AccountId> by) {}

    /** Whether an item is about the setting of a pump that waits for its second check. */
    static boolean isOfPump(Item item) {
        return item.cause().rule() == Rule.SECOND_CHECK && what(item) == What.PUMP;
    }

    /** Where in a child's folder it is typed again. */
    static String tab(Item item) {
        return switch (what(item)) {
            case MEDICINE, CALENDAR -> "/medicines";
            case PUMP -> "/pump";
            case STIMULATOR -> "/stimulator";
        };
    }

    /** Whether an item is about a reading of a stimulator that waits for its second check. */
    static boolean isOfStimulator(Item item) {
        return item.cause().rule() == Rule.SECOND_CHECK && what(item) == What.STIMULATOR;
    }

    NeedWords.Why why(Viewer.Person viewer, Item item) {
        var language = viewer.language();
        var what = what(item);
        var about = about(viewer, item, what);
        return new NeedWords.Why(
                words.say(language, "caseload.second-check." + what, about.name()),
                words.say(language, "caseload.second-check.since", item.cause().day()),
                about.by()
                        .map(by -> words.say(
                                language,
                                what == What.PUMP ? "caseload.second-check.sheet" : "caseload.second-check.family",
                                people.name(viewer, by)))
                        .orElse(""));
    }

    private About about(Viewer.Person viewer, Item item, What what) {
        var version = Long.parseLong(part(item, 2));
        if (what == What.PUMP) {
            return new About(
                    "",
                    pumps.waiting(viewer, item.child()).stream()
                            .filter(entry -> entry.number() == version)
                            .map(Pumps.Waiting::by)
                            .findFirst());
        }
        if (what == What.STIMULATOR) {
            var reading = stimulators.revisions(viewer, item.child()).stream()
                    .filter(one -> one.counts() && one.reading().revision() == version)
                    .findFirst();
            return new About("", reading.map(one -> one.reading().by()));
        }
        Map<String, Medicine> lines = medicines.current(viewer, item.child()).stream()
                .collect(Collectors.toMap(line -> line.id().toString(), Function.identity()));
        var line = Optional.ofNullable(lines.get(part(item, 1)));
        var by = what == What.MEDICINE
                ? line.filter(one -> one.version() == version).map(Medicine::by)
                : line.flatMap(one -> Optional.ofNullable(
                                tapers.current(viewer, item.child()).get(one.id())))
                        .filter(taper -> taper.number() == version)
                        .map(Tapers.Taper::by);
        return new About(line.map(one -> one.data().name()).orElse(""), by);
    }

    private static What what(Item item) {
        return What.valueOf(part(item, 0));
    }

    /** What, which, and its version: the parts of an {@code Unconfirmed}’s key. */
    private static String part(Item item, int place) {
        return item.cause().subject().split("/", -1)[place];
    }
}
