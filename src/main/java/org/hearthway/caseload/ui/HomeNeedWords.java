package org.hearthway.caseload.ui;

import java.math.BigDecimal;
import java.util.List;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Language;
import org.hearthway.base.Viewer;
import org.hearthway.caseload.Needs.Item;
import org.hearthway.caseload.engine.Cause;
import org.hearthway.caseload.ui.NeedWords.Why;
import org.hearthway.program.CareTurns;
import org.hearthway.program.Exercise;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.ProgramWords;
import org.hearthway.program.Progress;
import org.hearthway.words.Words;
import org.springframework.stereotype.Component;

/** What the record of a home program asks to look at, in words that say the numbers by which it was found. */
@Component
class HomeNeedWords {

    /** As the rule writes it into the subject of its cause. */
    private static final String SHARE = "share";

    private final Words words;
    private final ExerciseLibrary library;
    private final ProgramWords programWords;
    private final Progress progress;
    private final CareTurns turns;

    HomeNeedWords(Words words, ExerciseLibrary library, ProgramWords programWords, Progress progress, CareTurns turns) {
        this.words = words;
        this.library = library;
        this.programWords = programWords;
        this.progress = progress;
        this.turns = turns;
    }

    Why rising(Language language, Cause cause) {
        var says = says(cause);
        return new Why(
                words.say(language, "caseload.rising." + says.get(0)),
                words.say(language, "caseload.rising.by", new BigDecimal(says.get(says.size() - 1))),
                says.get(1).equals(SHARE)
                        ? words.say(
                                language,
                                "caseload.rising.share",
                                cause.count(),
                                number(says.get(2)),
                                new BigDecimal(says.get(3)))
                        : words.say(
                                language,
                                "caseload.rising.rule",
                                cause.count(),
                                number(says.get(1)),
                                new BigDecimal(says.get(2)),
                                number(says.get(3)),
                                number(says.get(4))));
    }

    /** Sore, or too hard, on so many of the last days. */
    Why often(Language language, Cause cause, String key) {
        var says = says(cause);
        return new Why(
                words.say(language, key, number(says.get(1)), cause.count(), number(says.get(3))),
                words.say(language, "caseload.rated." + says.get(0)),
                words.say(language, "caseload.often.rule", number(says.get(2)), number(says.get(3))));
    }

    Why stopped(Language language, Cause cause) {
        var says = says(cause);
        return new Why(
                words.say(language, "caseload.stopped", cause.count(), number(says.get(1))),
                "",
                words.say(language, "caseload.stopped.rule", number(says.get(0))));
    }

    Why few(Language language, Cause cause) {
        var says = says(cause);
        return new Why(
                words.say(language, "caseload.few", cause.count(), number(says.get(1))),
                "",
                words.say(language, "caseload.few.rule", number(says.get(0)), number(says.get(2))));
    }

    Why more(Viewer.Person viewer, Item item) {
        var language = viewer.language();
        var cause = item.cause();
        var name = library.find(cause.subject()).map(Exercise::name).orElse(Bilingual.same(cause.subject()));
        var proposed = progress.proposed(viewer, item.child()).stream()
                .filter(one -> one.now().exercise().equals(cause.subject()))
                .map(one -> words.say(
                        language,
                        "caseload.more.proposed",
                        programWords.dose(language, one.then()),
                        programWords.dose(language, one.now())))
                .findFirst()
                .orElse("");
        return new Why(
                words.say(language, "caseload.more", name),
                proposed,
                words.say(language, "caseload.more.rule", cause.count()));
    }

    /** Exercises that a rule of care shuts off, or opens again. */
    Why turned(Viewer.Person viewer, Item item) {
        var language = viewer.language();
        var cause = item.cause();
        var shut = cause.subject().equals("shut");
        var names = turns.between(viewer, item.child(), cause.day(), cause.day()).stream()
                .filter(turn -> turn.inProgram() && turn.forbids() == shut)
                .map(turn -> programWords.name(language, turn.exercise()))
                .toList();
        return new Why(
                words.say(language, shut ? "caseload.turned.shut" : "caseload.turned.open", cause.count()),
                names.isEmpty() ? "" : words.list(language, names),
                words.say(language, shut ? "caseload.turned.shut.rule" : "caseload.turned.open.rule", cause.day()));
    }

    private static List<String> says(Cause cause) {
        return List.of(cause.subject().split("/"));
    }

    private static int number(String text) {
        return Integer.parseInt(text);
    }
}
