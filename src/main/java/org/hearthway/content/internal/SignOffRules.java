package org.hearthway.content.internal;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Problem;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.hearthway.content.Provenance;
import org.hearthway.words.ReadingLevel;
import org.springframework.stereotype.Component;

/** What is asked of family texts in use, from {@code content/sign-off.yaml}. */
@Component
class SignOffRules implements ContentKind {

    private Period every = Period.ofYears(1);
    private int longest = 1;
    private double hardestGrade;
    private int leastEase;
    private int readingFrom = 1;

    @Override
    public String place() {
        return "sign-off.yaml";
    }

    @Override
    public void read(Entry file) {
        every = file.period("review-every");
        if (every.isNegative() || every.isZero()) {
            file.wrong("review-every", "\"review-every\" is " + every, "a gap of a day or more, such as P1Y");
        }
        var own = file.block("own-words");
        longest = own.integer("longest", 20, 2_000);
        hardestGrade = own.integer("hardest-grade-tenths", 30, 120) / 10.0;
        leastEase = own.integer("least-ease", 30, 100);
        readingFrom = own.integer("reading-from-words", 1, 100);
        own.done();
        file.text("source");
    }

    /** The interval after the later of both; a review counts once both languages have one. */
    Optional<LocalDate> dueAgain(Provenance provenance, Optional<LocalDate> accepted) {
        var reviewed = provenance
                .english()
                .flatMap(en -> provenance.spanish().map(es -> en.on().isBefore(es.on()) ? en.on() : es.on()));
        return accepted.flatMap(day ->
                        reviewed.map(other -> day.isAfter(other) ? day : other).or(() -> accepted))
                .or(() -> reviewed)
                .map(day -> day.plus(every));
    }

    /** What is wrong with words that a clinic puts in place of a text, whatever their kind. */
    List<Problem> problems(String en, String es, Bilingual now) {
        var problems = new ArrayList<Problem>();
        shape("en", en, problems);
        shape("es", es, problems);
        if (!problems.isEmpty()) {
            return problems;
        }
        if (en.equals(es)) {
            problems.add(Problem.at("es", "content.problem.same"));
        } else if (en.equals(now.en()) && es.equals(now.es())) {
            problems.add(Problem.at("en", "content.problem.unchanged"));
        }
        var english = ReadingLevel.english(en);
        if (english.words() >= readingFrom && english.fleschKincaidGrade() > hardestGrade) {
            problems.add(Problem.at("en", "content.problem.hard-en", english.fleschKincaidGrade(), hardestGrade));
        }
        var spanish = ReadingLevel.spanish(es);
        if (spanish.words() >= readingFrom && spanish.fernandezHuertaEase() < leastEase) {
            problems.add(Problem.at("es", "content.problem.hard-es", spanish.fernandezHuertaEase(), leastEase));
        }
        return problems;
    }

    private void shape(String field, String words, List<Problem> problems) {
        if (words.chars().noneMatch(Character::isLetterOrDigit)) {
            problems.add(Problem.at(field, "content.problem.both"));
        } else if (words.length() > longest) {
            problems.add(Problem.at(field, "content.problem.long", longest, words.length()));
        } else if (words.chars().anyMatch(Character::isISOControl)) {
            problems.add(Problem.at(field, "content.problem.lines"));
        }
    }
}
