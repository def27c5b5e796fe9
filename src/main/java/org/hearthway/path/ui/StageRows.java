package org.hearthway.path.ui;

import java.time.LocalDate;
import org.hearthway.base.Language;
import org.hearthway.parts.Stone;
import org.hearthway.parts.SvgText;
import org.hearthway.path.engine.Plan.State;
import org.hearthway.path.ui.Lanes.Lane;
import org.hearthway.path.ui.Lanes.Placed;

/** The stages ahead, each on a level of its own under the line, so that windows that overlap in time stay apart. */
final class StageRows {

    /** Where the first level lies, and how far the next is from it. */
    private static final double FIRST = 146;

    private static final double STEP = 32;
    private static final double UNDER_THE_LAST = 18;
    private static final double BESIDE = 14;
    private static final double OVER = 13;
    private static final double HALF_STONE = 11;

    /** About the width of a letter of the small bold face, in the picture's units. */
    private static final double LETTER = 6.3;

    private final Lanes lanes;
    private final Language language;
    private final double width;

    StageRows(Lanes lanes, Language language, double width) {
        this.lanes = lanes;
        this.language = language;
        this.width = width;
    }

    private static boolean isAhead(Placed placed) {
        return placed.stage().state() == State.TO_COME;
    }

    /** How deep the levels of a lane reach; 0 when nothing lies ahead. */
    static double depth(Lane lane) {
        var many = lane.placed().stream().filter(StageRows::isAhead).count();
        return many == 0 ? 0 : FIRST + (many - 1) * STEP + UNDER_THE_LAST;
    }

    /** The level of a stage ahead. */
    static double level(Lane lane, Placed placed) {
        var ahead = lane.placed().stream().filter(StageRows::isAhead).toList();
        return FIRST + ahead.indexOf(placed) * STEP;
    }

    void draw(SvgText picture, Lane lane) {
        lane.placed().stream().filter(StageRows::isAhead).forEach(placed -> row(picture, placed, level(lane, placed)));
    }

    private void row(SvgText picture, Placed placed, double y) {
        var stage = placed.stage();
        var from = Math.min(placed.x() - HALF_STONE, of(stage.earliest()));
        var to = Math.max(placed.x() + HALF_STONE, of(stage.latest().orElse(stage.earliest())));
        if (stage.latest().orElse(stage.earliest()).isAfter(stage.earliest())) {
            picture.shape(
                    "rect",
                    "class",
                    "sv-win",
                    "x",
                    SvgText.number(of(stage.earliest())),
                    "y",
                    SvgText.number(y - 5),
                    "width",
                    SvgText.number(Math.max(4, of(stage.latest().orElseThrow()) - of(stage.earliest()))),
                    "height",
                    "10",
                    "rx",
                    "5");
        }
        picture.shape("path", "class", "st-later", "d", Stone.outline(placed.x(), y, HALF_STONE, 8.8, (int) y));
        name(picture, placed, new Extent(from, to), y);
    }

    /** From where to where a window and its stone reach. */
    private record Extent(double from, double to) {}

    /** In front of the window where there is room, else behind it, else over its stone. */
    private void name(SvgText picture, Placed placed, Extent extent, double y) {
        var name = placed.stage().stage().name().in(language);
        var wide = name.length() * LETTER;
        if (extent.from() - BESIDE - wide >= 0) {
            picture.text(extent.from() - BESIDE, y + 4, "ch-tb", "end", name);
        } else if (extent.to() + BESIDE + wide <= width) {
            picture.text(extent.to() + BESIDE, y + 4, "ch-tb", "start", name);
        } else {
            var middle = Math.max(wide / 2, Math.min(width - wide / 2, placed.x()));
            picture.text(middle, y - OVER, "ch-tb", "middle", name);
        }
    }

    private double of(LocalDate day) {
        return lanes.of(day);
    }
}
