package org.hearthway.path.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.parts.SvgText;
import org.hearthway.path.Plans;
import org.hearthway.path.Plans.Beginning;
import org.hearthway.path.Plans.Start;
import org.hearthway.testing.Children;
import org.hearthway.testing.HearthwayTest;
import org.hearthway.testing.People;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;

/** The clinic's today is March 12, 2026; the paths began so many weeks before. */
@HearthwayTest
class StageRowsTests {

    private static final Viewer.Person PHYSICIAN = People.with(Role.PHYSICIAN);
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);
    private static final double WIDTH = 1248;
    private static final double LETTER = 6.3;
    private static final Pattern WINDOW =
            Pattern.compile("<rect class=\"sv-win\" x=\"([-.\\d]+)\" y=\"([-.\\d]+)\" width=\"([-.\\d]+)\"");
    private static final Pattern NAME =
            Pattern.compile("<text x=\"([-.\\d]+)\" y=\"([-.\\d]+)\" class=\"ch-tb\" text-anchor=\"(\\w+)\">([^<]*)<");

    @Autowired
    private Plans plans;

    @Autowired
    private ChildRegister register;

    private record Box(double from, double to, double y) {

        private boolean liesOn(Box other) {
            return Math.abs(y - other.y) < 12 && from < other.to && other.from < to;
        }
    }

    private static double number(MatchResult found, int group) {
        return Double.parseDouble(found.group(group));
    }

    private static Box window(MatchResult found) {
        return new Box(number(found, 1), number(found, 1) + number(found, 3), number(found, 2) + 5);
    }

    private static Box name(MatchResult found) {
        var wide = found.group(4).length() * LETTER;
        var x = number(found, 1);
        var from = switch (found.group(3)) {
            case "start" -> x;
            case "end" -> x - wide;
            default -> x - wide / 2;
        };
        return new Box(from, from + wide, number(found, 2) - 4);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 3, 8, 14, 20, 30})
    void noWindowAndNoNameLiesOnAnother(int weeks) {
        var child = Children.enter(register);
        for (var path : plans.pathways()) {
            var plan = plans.outlook(
                            PHYSICIAN, child, Start.atFirst(path.id(), Beginning.BESIDE, TODAY.minusWeeks(weeks)))
                    .plan();
            var lanes = new Lanes(List.of(plan), Zoom.MONTHS, 38, WIDTH - 76, 40);
            for (var language : Language.values()) {
                var picture = new SvgText("", 0, 0, WIDTH, 600).decorative();
                new StageRows(lanes, language, WIDTH).draw(picture, lanes.all().get(0));
                var boxes = new ArrayList<Box>();
                WINDOW.matcher(picture.toString())
                        .results()
                        .map(StageRowsTests::window)
                        .forEach(boxes::add);
                var windows = boxes.size();
                NAME.matcher(picture.toString())
                        .results()
                        .map(StageRowsTests::name)
                        .forEach(boxes::add);
                assertThat(boxes.size() > windows)
                        .as(path.id())
                        .isEqualTo(StageRows.depth(lanes.all().get(0)) > 0);
                assertThat(boxes).allMatch(box -> box.from() >= 0 && box.to() <= WIDTH);
                for (var box : boxes) {
                    assertThat(boxes)
                            .as(path.id() + " " + language)
                            .filteredOn(other -> other != box && other.liesOn(box))
                            .isEmpty();
                }
            }
        }
    }
}
