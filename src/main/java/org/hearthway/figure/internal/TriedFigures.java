package org.hearthway.figure.internal;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.hearthway.base.Action;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.content.ContentFolder;
import org.hearthway.content.TriedFile;
import org.hearthway.content.TriedFile.Mistake;
import org.hearthway.figure.FigureTrials;
import org.hearthway.figure.engine.Dress;
import org.hearthway.figure.engine.Picture;
import org.hearthway.figure.engine.Side;
import org.springframework.stereotype.Service;

/** Draws what an author types. */
@Service
class TriedFigures implements FigureTrials {

    private static final Pattern ID = Pattern.compile("(?m)^id:\\s*([a-z0-9-]+)\\s*$");

    private final FigureKind content;
    private final ContentFolder folder;
    private final FigureWords words;
    private final Gate gate;

    TriedFigures(FigureKind content, ContentFolder folder, FigureWords words, Gate gate) {
        this.content = content;
        this.folder = folder;
        this.words = words;
        this.gate = gate;
    }

    @Override
    public List<String> names(Viewer viewer) {
        gate.require(viewer, Action.TRY_PICTURE);
        return content.names();
    }

    @Override
    public Optional<String> text(Viewer viewer, String name) {
        gate.require(viewer, Action.TRY_PICTURE);
        return content.has(name) ? folder.text(file(name)) : Optional.empty();
    }

    private static String file(String name) {
        return "figures/" + name + ".yaml";
    }

    @Override
    public Trial of(Viewer viewer, String text) {
        gate.require(viewer, Action.TRY_PICTURE);
        if (text.length() > LONGEST) {
            throw new Invalid(Problem.at("text", "figure.problem.long", LONGEST, text.length()));
        }
        var id = ID.matcher(text);
        // a file is named after its picture; a text without a name is told so by the reader
        var file = file(id.find() ? id.group(1) : "new");
        var tried = TriedFile.read(file, text, entry -> new SheetReader(entry).read());
        if (tried.read().isEmpty()) {
            return new Trial(tried.mistakes(), List.of(), List.of());
        }
        var sheet = tried.read().get();
        try {
            var picture = new Picture(sheet);
            var end = lineOf(text, "end:");
            var mistakes = picture.findings().stream()
                    .map(says -> new Mistake(end, says))
                    .toList();
            var sides = sheet.sided()
                    ? List.of(drawn(picture, Optional.of(Side.RIGHT)), drawn(picture, Optional.of(Side.LEFT)))
                    : List.of(drawn(picture, Optional.empty()));
            return new Trial(mistakes, picture.beyondNorms(), sides);
        } catch (IllegalArgumentException | ArithmeticException | java.util.NoSuchElementException notDrawn) {
            // numbers that no body has, such as a ball at the end of the world
            return new Trial(
                    List.of(new Mistake(1, "it cannot be drawn: " + notDrawn.getMessage())), List.of(), List.of());
        }
    }

    private Drawn drawn(Picture picture, Optional<Side> side) {
        boolean left = side.filter(Side.LEFT::equals).isPresent();
        var dress = new Dress(left, 0);
        var says = new Bilingual(words.told(picture, Language.EN, left), words.told(picture, Language.ES, left));
        return new Drawn(
                side,
                picture.start(dress, says.en()),
                picture.end(dress, says.en()),
                picture.moving(dress, says.en()),
                picture.ratio(),
                says);
    }

    private static int lineOf(String text, String key) {
        var lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).startsWith(key)) {
                return i + 1;
            }
        }
        return 1;
    }
}
