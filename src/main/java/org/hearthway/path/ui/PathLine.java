package org.hearthway.path.ui;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hearthway.base.Language;
import org.hearthway.parts.Drawing;
import org.hearthway.parts.Stone;
import org.hearthway.parts.SvgText;
import org.hearthway.path.Plans.Move;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Plan.State;
import org.hearthway.path.ui.Lanes.Lane;
import org.hearthway.path.ui.Lanes.Placed;
import org.hearthway.words.Words;

/**
 * A child's paths, each a level row of stones on one time line: behind us filled, now lit at today, ahead outlined on
 * its window, and where a change would move them. Of the next months each stage ahead lies on a level of its own.
 */
final class PathLine {

    private static final double WIDTH = 1248;
    private static final double LEFT = 38;
    private static final double CEILING = 22;
    private static final double LINE = 90;
    private static final double LANE = 146;
    private static final double FOOT = 28;
    private static final double STONE_GAP = 40;
    private static final double LETTER_ROOM = 13;
    private static final double YEAR_ROOM = 44;
    private static final double TODAY_ROOM = 130;
    private static final double GLOW_X = 80;
    private static final double GLOW_Y = 56;

    private final Words words;
    private final Language language;
    private final List<Plan> plans;
    private final Lanes lanes;
    private final Zoom zoom;
    private final double floor;

    PathLine(Words words, Language language, List<Plan> plans, Zoom zoom) {
        this.words = words;
        this.language = language;
        this.plans = plans;
        lanes = new Lanes(plans, zoom, LEFT, WIDTH - 2 * LEFT, STONE_GAP);
        this.zoom = zoom;
        floor = CEILING + lanes.all().stream().mapToDouble(this::deep).sum();
    }

    private boolean hasLevels() {
        return zoom == Zoom.MONTHS;
    }

    /** How deep a lane is. */
    private double deep(Lane lane) {
        return hasLevels() ? Math.max(LANE, StageRows.depth(lane)) : LANE;
    }

    /** Where a stage lies in its lane. */
    private double level(Lane lane, Placed placed) {
        return hasLevels() && placed.stage().state() == State.TO_COME ? StageRows.level(lane, placed) : LINE;
    }

    /** The picture, with the moves of one of the paths, which is named. */
    Drawing draw(String moving, List<Move> moves) {
        var picture = new SvgText("u-block u-over", 0, 0, WIDTH, floor + FOOT).named(label());
        months(picture);
        today(picture);
        var down = 0.0;
        for (var lane : lanes.all()) {
            picture.group("transform", "translate(0 " + SvgText.number(down) + ")");
            lane(picture, lane, lane.plan().template().id().equals(moving) ? moves : List.of());
            picture.end();
            down += deep(lane);
        }
        return new Drawing(picture);
    }

    private String label() {
        return plans.stream().map(this::label).collect(Collectors.joining(" "));
    }

    private String label(Plan plan) {
        var stages = plan.stages();
        if (stages.isEmpty()) {
            return plan.template().name().in(language);
        }
        return words.say(
                language,
                "path.line.label",
                plan.template().name(),
                words.dateWithYear(language, stages.get(0).start()),
                words.dateWithYear(language, stages.get(stages.size() - 1).start()),
                plan.now().map(s -> s.stage().name().in(language)).orElse(words.say(language, "path.line.none")));
    }

    private void months(SvgText picture) {
        var first = lanes.first();
        var last = lanes.last();
        picture.shape("path", "class", "ch-ax2", "d", line(LEFT - 22, floor, WIDTH - LEFT + 22));
        var before = -LETTER_ROOM;
        var yearSaid = 0;
        var yearAt = -YEAR_ROOM;
        for (var month = first.withDayOfMonth(1); !month.isAfter(last); month = month.plusMonths(1)) {
            var x = month.isBefore(first) ? LEFT - 22 : lanes.of(month);
            var next = lanes.of(month.plusMonths(1));
            picture.shape("path", "class", "ch-ax", "d", "M" + number(x) + " " + number(CEILING) + "V" + number(floor));
            if (next - x > LETTER_ROOM && x - before >= LETTER_ROOM) {
                picture.text((x + next) / 2, floor + 16, "ch-t", "middle", letters(month, next - x));
            }
            if (month.getYear() != yearSaid && x - yearAt >= YEAR_ROOM) {
                picture.text(x + 4, 14, "ch-tb", "start", String.valueOf(month.getYear()));
                yearSaid = month.getYear();
                yearAt = x;
            }
            before = x;
        }
    }

    /** As much of the month's name as there is room for. */
    private String letters(LocalDate month, double room) {
        var name = words.shortMonth(language, month);
        return room > 30 ? name : name.substring(0, 1).toUpperCase(language.locale());
    }

    private void lane(SvgText picture, Lane lane, List<Move> moves) {
        if (plans.size() > 1) {
            picture.text(
                    LEFT - 22,
                    CEILING + 12,
                    "ch-tb",
                    "start",
                    lane.plan().template().name().in(language));
        }
        if (!hasLevels()) {
            windows(picture, lane);
        }
        way(picture, lane);
        if (hasLevels()) {
            new StageRows(lanes, language, WIDTH).draw(picture, lane);
        }
        var moved = moves.stream().collect(Collectors.toMap(Move::stage, move -> move));
        for (int i = 0; i < lane.placed().size(); i++) {
            var placed = lane.placed().get(i);
            if (level(lane, placed) == LINE) {
                stone(picture, placed, i);
            }
            var move = Optional.ofNullable(moved.get(placed.stage().point()));
            // one arrow tells the change; what follows it only shows where it goes
            var first = move.filter(m -> m.equals(moves.get(0))).isPresent();
            move.ifPresent(m -> moving(picture, placed.x(), lanes.of(m.to()), level(lane, placed), first));
        }
        names(picture, lane);
    }

    private void windows(SvgText picture, Lane lane) {
        for (var placed : lane.placed()) {
            var stage = placed.stage();
            var latest = stage.latest().orElse(stage.earliest());
            if (stage.state() == State.TO_COME && latest.isAfter(stage.earliest())) {
                var from = lanes.of(stage.earliest());
                picture.shape(
                        "rect",
                        "class",
                        "sv-win",
                        "x",
                        number(from),
                        "y",
                        number(LINE - 5),
                        "width",
                        number(Math.max(4, lanes.of(latest) - from)),
                        "height",
                        "10",
                        "rx",
                        "5");
            }
        }
    }

    private void way(SvgText picture, Lane lane) {
        var now = lane.placed().stream()
                .filter(placed -> placed.stage().state() == State.NOW)
                .findFirst();
        var x = now.map(Placed::x).orElseGet(() -> lanes.of(lane.plan().today()));
        if (now.isPresent()) {
            picture.shape(
                    "ellipse",
                    "class",
                    "st-glow",
                    "cx",
                    number(x),
                    "cy",
                    number(LINE),
                    "rx",
                    number(GLOW_X),
                    "ry",
                    number(GLOW_Y));
        }
        if (lane.plan().over().isEmpty()) {
            picture.shape("path", "class", "st-track", "d", line(x, LINE, WIDTH - LEFT + 22));
        }
        lane.plan().stages().stream()
                .findFirst()
                .map(first -> lanes.of(first.start()))
                .filter(begun -> begun < x)
                .ifPresent(begun -> picture.shape("path", "class", "st-behind", "d", line(begun, LINE, x)));
    }

    private void today(SvgText picture) {
        var day = plans.get(0).today();
        var x = lanes.of(day);
        picture.shape(
                "path",
                "class",
                "sv-ink today",
                "stroke-width",
                "1.5",
                "d",
                "M" + number(x) + " " + number(CEILING) + "V" + number(floor));
        var near = x > WIDTH - TODAY_ROOM;
        picture.text(
                near ? x - 5 : x + 5, 32, "ch-tb", near ? "end" : "start", words.say(language, "path.line.today", day));
    }

    private static void stone(SvgText picture, Placed placed, int seed) {
        var x = placed.x();
        switch (placed.stage().state()) {
            case PAST -> {
                picture.shape("path", "class", "st-done", "d", Stone.outline(x, LINE, 12, 9.6, seed));
                picture.shape("path", "class", "st-done-mark sv-2", "d", "M" + number(x - 4) + " 90l3 3 5.5-6.5");
            }
            case NOW -> {
                var outline = Stone.outline(x, LINE, 16, 12.5, seed);
                picture.shape("path", "class", "st-now", "d", outline);
                picture.shape("path", "class", "st-now-edge", "d", outline);
            }
            case TO_COME -> picture.shape("path", "class", "st-later", "d", Stone.outline(x, LINE, 11, 8.8, seed));
        }
    }

    private static void moving(SvgText picture, double from, double to, double y, boolean arrow) {
        picture.shape("path", "class", "sv-moving", "stroke-width", "2.2", "d", Stone.outline(to, y, 12, 9.6, 77));
        if (arrow && Math.abs(to - from) > 14) {
            var middle = (from + to) / 2;
            var tip = number(to) + " " + number(y - 14);
            picture.shape(
                    "path",
                    "class",
                    "sv-kiln sv-open",
                    "stroke-width",
                    "1.8",
                    "stroke-linecap",
                    "round",
                    "stroke-linejoin",
                    "round",
                    "d",
                    "M" + number(from) + " " + number(y - 14) + "Q" + number(middle) + " " + number(y - 32) + " " + tip
                            + "M" + tip
                            + (to > from ? "l-8-2M" : "l8-2M") + tip + "l-1.5-8");
        }
    }

    private void names(SvgText picture, Lane lane) {
        var labels = new Labels(hasLevels() ? List.of(118.0, 56.0) : List.of(118.0, 56.0, 134.0, 150.0), WIDTH);
        for (var placed : lane.placed().stream()
                .filter(placed -> level(lane, placed) == LINE)
                .toList()) {
            var name = placed.stage().stage().name().in(language);
            labels.row(placed.x(), name)
                    .ifPresent(y -> picture.text(labels.middle(placed.x(), name), y, "ch-tb", "middle", name));
        }
    }

    private static String line(double from, double y, double to) {
        return "M" + number(from) + " " + number(y) + "H" + number(to);
    }

    private static String number(double coordinate) {
        return SvgText.number(coordinate);
    }
}
