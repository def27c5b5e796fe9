package org.hearthway.figure.internal;

import java.util.ArrayList;
import java.util.Optional;
import org.hearthway.base.Language;
import org.hearthway.figure.engine.FigureSheet;
import org.hearthway.figure.engine.Marks;
import org.hearthway.figure.engine.Picture;
import org.hearthway.figure.engine.Support;
import org.hearthway.figure.engine.Telling;
import org.hearthway.figure.engine.Told;
import org.hearthway.words.Words;
import org.springframework.stereotype.Component;

/** Says what a picture shows, and what stands above it on paper. */
@Component
class FigureWords {

    /** From so many seconds on a hold is told in minutes. */
    private static final int LONG = 120;

    private final Words words;

    FigureWords(Words words) {
        this.words = words;
    }

    String told(Picture picture, Language language, boolean mirrored) {
        var told = Telling.of(picture, mirrored);
        var sentences = new ArrayList<String>();
        var where = told.supports().stream()
                .map(Support.Kind::name)
                .map(kind -> words.say(language, "figure.on." + kind))
                .toList();
        var posture = words.say(language, "figure.posture." + told.posture());
        sentences.add(
                where.isEmpty()
                        ? words.say(language, "figure.child", posture)
                        : words.say(language, "figure.child.on", posture, words.list(language, where)));
        told.ends()
                .ifPresent(end -> sentences.add(
                        words.say(language, "figure.ends", words.say(language, "figure.posture." + end))));
        told.changes().forEach(change -> sentences.add(change(language, change)));
        if (told.helped()) {
            sentences.add(words.say(language, "figure.helper"));
        }
        return String.join(" ", sentences);
    }

    private String change(Language language, Told.Change change) {
        var key = "figure.change." + change.movement() + (change.more() ? ".more" : ".less");
        var what = words.say(language, key);
        return change.who() == Told.Who.WHOLE
                ? words.say(language, "figure.whole", what)
                : words.say(language, "figure.side", words.say(language, "figure.who." + change.who()), what);
    }

    private String hold(Language language, int seconds) {
        return seconds >= LONG
                ? words.say(language, "figure.hold.minutes", seconds / 60)
                : words.say(language, "figure.hold.seconds", seconds);
    }

    Marks marks(FigureSheet sheet, Language language, boolean left) {
        var side = sheet.sided()
                ? Optional.of(words.say(language, left ? "figure.letter.left" : "figure.letter.right"))
                : Optional.<String>empty();
        var hold = sheet.hold() > 0 ? Optional.of(hold(language, sheet.hold())) : Optional.<String>empty();
        return new Marks(side, hold);
    }
}
