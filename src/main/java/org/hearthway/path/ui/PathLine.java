package org.hearthway.path.ui;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hearthway.base.Language;
import org.hearthway.parts.Drawing;
import org.hearthway.parts.Stone;
import org.hearthway.parts.SvgText;
import org.hearthway.path.Plans;
import org.hearthway.path.engine.Plan;
import org.hearthway.path.engine.Plan.Planned;
import org.hearthway.path.engine.Plan.State;
import org.hearthway.words.Words;

/**
 * The path as a level row of stones on a time line: behind us filled, now lit at today, ahead outlined on its window,
 * and where a change would move them.
 */
final class PathLine {

    private static final double WIDTH = 1248;
    private static final double HEIGHT = 196;
    private static final double LEFT = 38;
    private static final double LINE = 90;
    private static final double FLOOR = 168;
    private static final double CEILING = 22;
    private static final double STONE_GAP = 40;
    private static final double LETTER_ROOM = 13;
    private static final double YEAR_ROOM = 44;
    private static final double TODAY_ROOM = 130;
    private static final double GLOW_X = 80;
    private static final double GLOW_Y = 56;

    private final Words words;
    private final Language language;

    PathLine(Words words, Language language) {
        this.words = words;
        this.language = language;
    }

    /** A stage on the line, with the day it is drawn at: the present one lies at today. */
    private record Placed(Planned stage, LocalDate day) {}

    Drawing draw(Plan plan, List<Plans.Move> moves) {
        var placed = plan.until(plan.today().plusYears(StageTable.YEARS_AHEAD)).stream()
                .map(s -> new Placed(s, s.state() == State.NOW ? plan.today() : s.start()))
                .sorted(Comparator.comparing(Placed::day))
                .collect(Collectors.toList());
        var scale = new TimeScale(
                placed.stream().map(Placed::day).collect(Collectors.toList()), LEFT, WIDTH - 2 * LEFT, STONE_GAP);
        var picture = new SvgText("u-block u-over", 0, 0, WIDTH, HEIGHT).named(label(plan));
        months(
                picture,
                scale,
                placed.get(0).day(),
                placed.get(placed.size() - 1).day());
        windows(picture, scale, placed);
        way(picture, scale, plan, placed);
        var moved = moves.stream().collect(Collectors.toMap(Plans.Move::stage, move -> move));
        for (int i = 0; i < placed.size(); i++) {
            stone(picture, placed.get(i), scale.ofStone(i), i);
            var move = Optional.ofNullable(moved.get(placed.get(i).stage().point()));
            var from = scale.ofStone(i);
            // one arrow tells the change; what follows it only shows where it goes
            var first = move.filter(m -> m.equals(moves.get(0))).isPresent();
            move.ifPresent(m -> moving(picture, from, scale.of(m.to()), first));
        }
        names(picture, scale, placed);
        return new Drawing(picture);
    }

    private String label(Plan plan) {
        var stages = plan.stages();
        return words.say(
                language,
                "path.line.label",
                plan.template().name(),
                words.dateWithYear(language, stages.get(0).start()),
                words.dateWithYear(language, stages.get(stages.size() - 1).start()),
                plan.now().map(s -> s.stage().name().in(language)).orElse(words.say(language, "path.line.none")));
    }

    private void months(SvgText picture, TimeScale scale, LocalDate first, LocalDate last) {
        picture.shape("path", "class", "ch-ax2", "d", line(LEFT - 22, FLOOR, WIDTH - LEFT + 22));
        var before = -LETTER_ROOM;
        var yearSaid = 0;
        var yearAt = -YEAR_ROOM;
        for (var month = first.withDayOfMonth(1); !month.isAfter(last); month = month.plusMonths(1)) {
            var x = month.isBefore(first) ? LEFT - 22 : scale.of(month);
            var next = scale.of(month.plusMonths(1));
            picture.shape("path", "class", "ch-ax", "d", "M" + number(x) + " " + number(CEILING) + "V" + number(FLOOR));
            if (next - x > LETTER_ROOM && x - before >= LETTER_ROOM) {
                picture.text((x + next) / 2, FLOOR + 16, "ch-t", "middle", letters(month, next - x));
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

    private static void windows(SvgText picture, TimeScale scale, List<Placed> placed) {
        for (var one : placed) {
            var stage = one.stage();
            var latest = stage.latest().orElse(stage.earliest());
            if (stage.state() == State.TO_COME && latest.isAfter(stage.earliest())) {
                var from = scale.of(stage.earliest());
                picture.shape(
                        "rect",
                        "class",
                        "sv-win",
                        "x",
                        number(from),
                        "y",
                        number(LINE - 5),
                        "width",
                        number(Math.max(4, scale.of(latest) - from)),
                        "height",
                        "10",
                        "rx",
                        "5");
            }
        }
    }

    private void way(SvgText picture, TimeScale scale, Plan plan, List<Placed> placed) {
        var today = scale.of(plan.today());
        var end = WIDTH - LEFT + 22;
        var hasNow = plan.now().isPresent();
        var meets = hasNow
                ? placed.stream().filter(p -> p.stage().state() == State.NOW).findFirst()
                : Optional.<Placed>empty();
        var x = meets.map(p -> scale.ofStone(placed.indexOf(p))).orElse(today);
        if (hasNow) {
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
        picture.shape("path", "class", "st-track", "d", line(x, LINE, end));
        picture.shape("path", "class", "st-behind", "d", line(LEFT, LINE, x));
        picture.shape(
                "path",
                "class",
                "sv-ink today",
                "stroke-width",
                "1.5",
                "d",
                "M" + number(x) + " " + number(CEILING) + "V" + number(FLOOR));
        var near = x > WIDTH - TODAY_ROOM;
        picture.text(
                near ? x - 5 : x + 5,
                32,
                "ch-tb",
                near ? "end" : "start",
                words.say(language, "path.line.today", plan.today()));
    }

    private static void stone(SvgText picture, Placed placed, double x, int seed) {
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

    private static void moving(SvgText picture, double from, double to, boolean arrow) {
        picture.shape("path", "class", "sv-moving", "stroke-width", "2.2", "d", Stone.outline(to, LINE, 12, 9.6, 77));
        if (arrow && Math.abs(to - from) > 14) {
            var middle = (from + to) / 2;
            var tip = number(to) + " 76";
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
                    "M" + number(from) + " 76Q" + number(middle) + " 58 " + tip + "M" + tip
                            + (to > from ? "l-8-2M" : "l8-2M") + tip + "l-1.5-8");
        }
    }

    private void names(SvgText picture, TimeScale scale, List<Placed> placed) {
        var labels = new Labels(List.of(118.0, 56.0, 134.0, 150.0), WIDTH);
        for (int i = 0; i < placed.size(); i++) {
            var name = placed.get(i).stage().stage().name().in(language);
            var x = scale.ofStone(i);
            labels.row(x, name).ifPresent(y -> picture.text(labels.middle(x, name), y, "ch-tb", "middle", name));
        }
    }

    private static String line(double from, double y, double to) {
        return "M" + number(from) + " " + number(y) + "H" + number(to);
    }

    private static String number(double coordinate) {
        return SvgText.number(coordinate);
    }
}
