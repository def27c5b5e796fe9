package org.hearthway.paper.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.Language;
import org.hearthway.child.Child;
import org.hearthway.choosing.Answer;
import org.hearthway.choosing.Choosing;
import org.hearthway.choosing.Fact;
import org.hearthway.choosing.Talk;
import org.hearthway.choosing.engine.Guide;
import org.hearthway.choosing.engine.Line;
import org.hearthway.choosing.engine.Mark;
import org.hearthway.choosing.engine.Truth;
import org.hearthway.words.Words;

/**
 * The page for the team meeting in words, ready to print.
 *
 * @param who name of the child
 * @param about age, level and day
 * @param facts in columns: a heading, or a fact with what is known of it
 * @param paths always in the same order
 * @param sources each with the letter that stands behind what it says
 */
record TeamPage(String who, String about, List<List<FactLine>> facts, List<PathColumn> paths, List<Source> sources) {

    /** A heading when the value is empty. */
    record FactLine(String name, String value, boolean known) {}

    /**
     * One path.
     *
     * @param width in percent of the page, by how much there is to say of the path and not of the child
     */
    record PathColumn(String name, int width, List<Marked> marked, List<Noted> change) {}

    /** What stands under one mark. */
    record Marked(String style, String word, List<Noted> lines) {}

    /** A line and the letter of its source. */
    record Noted(String says, String letter) {}

    /** A source. */
    record Source(String letter, String says) {}

    /** Writes one page. */
    static final class Writer {

        private static final int COLUMNS = 5;
        private static final int LETTERS = 26;
        private static final int HUNDRED = 100;

        /** Lines that every column has: its name, the words of the marks, what change is usual. */
        private static final int HEAD = 8;

        private final Words words;
        private final Language language;
        private final Map<String, String> letters = new LinkedHashMap<>();

        Writer(Words words, Language language) {
            this.words = words;
            this.language = language;
        }

        TeamPage write(Child child, Talk talk, List<Fact.Group> groups, LocalDate today) {
            var names = new LinkedHashMap<String, String>();
            groups.forEach(group -> group.facts()
                    .forEach(fact -> names.put(fact.id(), fact.name().in(language))));
            var whole = talk.paths().stream().mapToInt(Writer::length).sum();
            var paths = talk.paths().stream()
                    .map(path -> column(path, names, HUNDRED * length(path) / whole))
                    .toList();
            var sources = new ArrayList<Source>();
            letters.forEach((says, letter) -> sources.add(
                    new Source(letter, says.equals(Choosing.NO_SOURCE) ? say("paper.choosing.no-source") : says)));
            return new TeamPage(
                    child.fullName(),
                    say(
                            "paper.choosing.about",
                            talk.years(),
                            talk.level().orElse(0),
                            words.dateWithYear(language, today)),
                    columns(lines(groups, talk)),
                    paths,
                    sources);
        }

        private List<FactLine> lines(List<Fact.Group> groups, Talk talk) {
            var lines = new ArrayList<FactLine>();
            for (var group : groups) {
                lines.add(new FactLine(group.name().in(language), "", true));
                group.facts().stream()
                        .filter(fact -> fact.origin() == Fact.Origin.ASKED)
                        .forEach(fact -> lines.add(line(fact, talk)));
            }
            return lines;
        }

        private FactLine line(Fact fact, Talk talk) {
            var held = Optional.ofNullable(talk.answers().get(fact.id()))
                    .map(Answer::data)
                    .map(Answer.Data::choices)
                    .orElse(Set.of());
            var chosen = fact.choices().stream()
                    .filter(choice -> held.contains(choice.id()))
                    .map(choice -> choice.name().in(language))
                    .toList();
            return new FactLine(
                    fact.name().in(language),
                    chosen.isEmpty() ? say("paper.choosing.unknown") : String.join(", ", chosen),
                    !chosen.isEmpty());
        }

        private static List<List<FactLine>> columns(List<FactLine> lines) {
            var each = (lines.size() + COLUMNS - 1) / COLUMNS;
            var columns = new ArrayList<List<FactLine>>();
            for (var from = 0; from < lines.size(); from += each) {
                columns.add(List.copyOf(lines.subList(from, Math.min(from + each, lines.size()))));
            }
            return columns;
        }

        /** How much there is to say of a path at most, in lines. */
        private static int length(Talk.OnPath path) {
            return HEAD + path.guide().criteria().size() + path.guide().points().size();
        }

        private PathColumn column(Talk.OnPath path, Map<String, String> names, int width) {
            var marked = new ArrayList<Marked>();
            for (var mark : Mark.values()) {
                var lines = new ArrayList<Noted>();
                path.lines().stream()
                        .filter(line -> line.mark() == mark)
                        .forEach(line -> lines.add(new Noted(says(line, names), letter(line.source()))));
                if (mark == Mark.TALK) {
                    path.guide()
                            .points()
                            .forEach(point -> lines.add(new Noted(point.says().in(language), letter(point.source()))));
                }
                if (!lines.isEmpty()) {
                    marked.add(new Marked("cg-" + mark, say("paper.choosing.mark." + mark), List.copyOf(lines)));
                }
            }
            return new PathColumn(path.guide().name().in(language), width, marked, change(path, names));
        }

        private String says(Line line, Map<String, String> names) {
            return line.holds().map(holds -> holds.says().in(language)).orElseGet(() -> list(line.missing(), names));
        }

        private String list(Set<String> facts, Map<String, String> names) {
            return words.list(
                    language,
                    names.entrySet().stream()
                            .filter(entry -> facts.contains(entry.getKey()))
                            .map(Map.Entry::getValue)
                            .toList());
        }

        private List<Noted> change(Talk.OnPath path, Map<String, String> names) {
            var change = path.guide().change();
            if (path.change() == Truth.UNKNOWN) {
                var missing = list(change.shown().facts(), names);
                return List.of(new Noted(say("paper.choosing.change.unknown", missing), ""));
            }
            if (path.change() == Truth.NO) {
                return List.of(noted(change.otherwise(), change));
            }
            return List.of(new Noted(change.says().says().in(language), ""), noted(change.beside(), change));
        }

        private Noted noted(Guide.Told told, Guide.Change change) {
            return new Noted(told.says().in(language), letter(change.source()));
        }

        /** The same source has the same letter; after z come aa, ab and so on. */
        private String letter(String source) {
            var next = letters.size();
            var letter = String.valueOf((char) ('a' + next % LETTERS));
            return letters.computeIfAbsent(source, added -> next < LETTERS ? letter : "a" + letter);
        }

        private String say(String key, Object... args) {
            return words.say(language, key, args);
        }
    }
}
