package org.hearthway.paper.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Language;
import org.hearthway.child.Child;
import org.hearthway.choosing.Handout;
import org.hearthway.choosing.engine.Mark;
import org.hearthway.words.Words;

/**
 * The page that the family takes home, in words, ready to print.
 *
 * @param who name of the child
 * @param day when it was put together
 * @param paths always in the same order
 */
record FamilyPage(String who, String day, List<Section> paths) {

    /**
     * One path.
     *
     * @param about what it is, what it asks, what change is usual
     * @param lines what is said for this child
     */
    record Section(String name, List<String> about, List<Said> lines) {}

    /** A line with the word of its mark. */
    record Said(String style, String word, String says) {}

    /** Writes one page. */
    record Writer(Words words, Language language) {

        FamilyPage write(Child child, Handout handout, LocalDate today) {
            return new FamilyPage(
                    child.name(),
                    words.monthDayYear(language, today),
                    handout.paths().stream().map(this::section).toList());
        }

        private Section section(Handout.Section path) {
            return path.body()
                    .map(body -> new Section(path.name().in(language), about(body), lines(body)))
                    .orElseGet(() -> new Section(
                            path.name().in(language), List.of(say("paper.choosing.family.ask")), List.of()));
        }

        private List<String> about(Handout.Body body) {
            var about = new ArrayList<String>();
            about.add(body.what().in(language));
            about.add(body.asks().in(language));
            if (!body.usual().isEmpty()) {
                var usual = body.usual().stream().map(each -> each.in(language)).toList();
                about.add(say("paper.choosing.family.usual", String.join(" ", usual)));
            }
            body.otherwise().ifPresent(says -> about.add(says.in(language)));
            return about;
        }

        private List<Said> lines(Handout.Body body) {
            var lines = new ArrayList<Said>();
            body.lines().forEach(line -> lines.add(said(line.mark(), line.says().in(language))));
            var missing = new ArrayList<>(body.missing().stream()
                    .map((Bilingual name) -> name.in(language))
                    .toList());
            if (body.unnamed()) {
                missing.add(say("paper.choosing.family.unnamed"));
            }
            if (!missing.isEmpty()) {
                lines.add(said(Mark.MISSING, words.list(language, missing)));
            }
            return lines;
        }

        private Said said(Mark mark, String says) {
            return new Said("cg-" + mark, say("paper.choosing.family.mark." + mark), says);
        }

        private String say(String key, Object... args) {
            return words.say(language, key, args);
        }
    }
}
