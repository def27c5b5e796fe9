package org.hearthway.figure.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.hearthway.figure.internal.ShippedFigures;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.xml.sax.InputSource;

/** What holds for each picture that we ship. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EveryFigureTests {

    private static final Dress AS_WRITTEN = new Dress(false, 0);
    private static final Dress MIRRORED = new Dress(true, 0);
    private static final Marks MARKS = new Marks(Optional.of("R"), Optional.of("30 s"));
    private static final Pattern ID = Pattern.compile(" id=\"([^\"]+)\"");
    private static final Pattern REFERENCE = Pattern.compile("(?:url\\(#|href=\"#)([^)\"]+)[)\"]");

    private record Case(FigureSheet sheet, Picture picture) {}

    private final List<Named<Case>> pictures = ShippedFigures.sheets().stream()
            .map(sheet -> Named.of(sheet.id(), new Case(sheet, new Picture(sheet))))
            .toList();

    Stream<Named<Case>> pictures() {
        return pictures.stream();
    }

    private static List<String> all(Picture picture) {
        return List.of(
                picture.start(AS_WRITTEN, "words"),
                picture.end(AS_WRITTEN, "words"),
                picture.moving(AS_WRITTEN, "words"),
                picture.paper(AS_WRITTEN, MARKS, "words"));
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void keepsItsContactsItsJointsAndTheFloor(Case one) {
        assertThat(one.picture().findings()).isEmpty();
    }

    /** Between the positions the solver holds only what both share; a foot may be on its way. */
    @ParameterizedTest
    @MethodSource("pictures")
    void staysAboveTheFloorOnTheWay(Case one) {
        for (double time : new double[] {1 / 6.0, 1 / 3.0, .5, 2 / 3.0, 5 / 6.0}) {
            var body = one.picture().scenery().body(time);
            for (var side : Side.values()) {
                for (var part : List.of(Part.FOOT, Part.TOES, Part.KNEE, Part.ELBOW)) {
                    assertThat(part.lumps(body, side))
                            .as("%s %s at %.2f", side, part, time)
                            .allSatisfy(lump -> assertThat(lump.lowest()).isGreaterThan(-.015));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void keepsEveryBoneItsLength(Case one) {
        for (double time : new double[] {0, 1 / 3.0, 2 / 3.0, 1}) {
            var body = one.picture().scenery().body(time);
            var size = body.size;
            for (var side : Side.values()) {
                var leg = body.leg(side);
                var arm = body.arm(side);
                assertThat(leg.knee().minus(leg.hip()).length()).isCloseTo(size.thigh(), within(1e-9));
                assertThat(leg.ankle().minus(leg.knee()).length()).isCloseTo(size.shank(), within(1e-9));
                assertThat(arm.elbow().minus(arm.shoulder()).length()).isCloseTo(size.upperArm(), within(1e-9));
                assertThat(arm.wrist().minus(arm.elbow()).length()).isCloseTo(size.forearm(), within(1e-9));
            }
        }
    }

    /** Who stands on the feet alone, hands free, has the weight over them. */
    @ParameterizedTest
    @MethodSource("pictures")
    void doesNotFallWhereItStandsFreely(Case one) {
        var motion = one.picture().motion();
        for (int stop = 0; stop < motion.stops(); stop++) {
            var contacts = motion.contacts(stop);
            var feet = contacts.stream().filter(c -> c.part() == Part.FOOT).toList();
            if (feet.isEmpty() || feet.size() < contacts.size()) {
                continue;
            }
            var body = one.picture().scenery().body((double) stop / (motion.stops() - 1));
            double from = feet.stream()
                    .mapToDouble(c -> body.leg(c.side()).heel().x())
                    .min()
                    .orElseThrow();
            double to = feet.stream()
                    .mapToDouble(c -> body.leg(c.side()).toe().x())
                    .max()
                    .orElseThrow();
            assertThat(Weight.middle(body).x()).isBetween(from - .02, to + .011);
        }
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void isTheSameWhenDrawnAgain(Case one) {
        assertThat(all(new Picture(one.sheet()))).isEqualTo(all(one.picture()));
    }

    /** Otherwise the author meant something that is not drawn. A breath moves no joint; it must be a deep one. */
    @ParameterizedTest
    @MethodSource("pictures")
    void showsThatSomethingMoves(Case one) {
        var start = one.picture().scenery().body(0);
        var end = one.picture().scenery().body(1);
        if (Math.abs(end.pose.get(Axis.BREATH) - start.pose.get(Axis.BREATH)) >= .8) {
            return;
        }
        assertThat(Swapped.POINTS)
                .anySatisfy(name -> assertThat(end.point(name)
                                .orElseThrow()
                                .minus(start.point(name).orElseThrow())
                                .length())
                        .isGreaterThan(.045));
    }

    /** The rail of the stairs stands on one side, so what holds it cannot change sides. */
    @ParameterizedTest
    @MethodSource("pictures")
    void comesOutMirroredWhenWrittenForTheOtherSide(Case one) {
        if (one.sheet().supports().stream().anyMatch(s -> s.kind() == Support.Kind.STAIRS)
                || one.sheet().stances().get(0).posture().orElseThrow().name().startsWith("SIDE_LYING")) {
            return;
        }
        var other = Swapped.motion(one.sheet());
        for (double time : new double[] {0, 1}) {
            var body = new Body(
                    one.picture().motion().at(time), one.picture().motion().size());
            var swapped = new Body(other.at(time), other.size());
            for (var name : Swapped.POINTS) {
                var here = body.point(name).orElseThrow();
                var there = Swapped.point(swapped, name).orElseThrow();
                assertThat(here.minus(there).length())
                        .as("%s at %.0f", name, time)
                        .isLessThan(1e-6);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void isMirroredAsAWholeForTheLeft(Case one) {
        var right = one.picture().end(AS_WRITTEN, "words");
        var left = one.picture().end(MIRRORED, "words");
        assertThat(left).contains("scale(-1 1)");
        assertThat(paths(left)).isEqualTo(paths(right));
        var there = viewBox(right);
        var here = viewBox(left);
        assertThat(here.get(0)).isEqualTo(-there.get(0) - there.get(2), within(1.0));
        assertThat(here.subList(1, 4)).isEqualTo(there.subList(1, 4));
    }

    /** Whoever stands up between two seats is taller on the way than at either end. */
    @ParameterizedTest
    @MethodSource("pictures")
    void keepsEveryPositionWithinThePicture(Case one) {
        var view = viewBox(one.picture().moving(AS_WRITTEN, "words"));
        var motion = one.picture().motion();
        for (int stop = 0; stop < motion.stops(); stop++) {
            var around = Box.around(one.picture().scenery().at((double) stop / (motion.stops() - 1)));
            assertThat(around.left()).isGreaterThan(view.get(0));
            assertThat(around.top()).isGreaterThan(view.get(1));
            assertThat(around.right()).isLessThan(view.get(0) + view.get(2));
            assertThat(around.bottom()).isLessThan(view.get(1) + view.get(3));
        }
    }

    private static List<Double> viewBox(String svg) {
        var box = Pattern.compile("viewBox=\"([^\"]+)\"").matcher(svg);
        assertThat(box.find()).isTrue();
        return Stream.of(box.group(1).split(" ")).map(Double::valueOf).toList();
    }

    private static List<String> paths(String svg) {
        return Pattern.compile(" d=\"([^\"]+)\"")
                .matcher(svg)
                .results()
                .map(m -> m.group(1))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void isWellFormedAndNamesNothingTwice(Case one) throws Exception {
        for (var svg : all(one.picture())) {
            DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
        }
        var ids = new ArrayList<String>();
        all(one.picture()).forEach(svg -> ID.matcher(svg).results().forEach(m -> ids.add(m.group(1))));
        assertThat(ids).doesNotHaveDuplicates();
        all(one.picture())
                .forEach(svg -> REFERENCE
                        .matcher(svg)
                        .results()
                        .forEach(m -> assertThat(ids).contains(m.group(1))));
    }

    /** The budget of the design: a still 10 kB, paper 16 kB, moving 32 kB, with a helper half as much again, packed. */
    @ParameterizedTest
    @MethodSource("pictures")
    void isSmallEnoughForAPhone(Case one) throws IOException {
        double more = one.sheet().helper().isPresent() ? 1.7 : 1;
        assertThat(packed(one.picture().end(AS_WRITTEN, "words"))).isLessThan((int) (10_000 * more));
        assertThat(packed(one.picture().paper(AS_WRITTEN, MARKS, "words"))).isLessThan((int) (16_000 * more));
        assertThat(packed(one.picture().moving(AS_WRITTEN, "words"))).isLessThan((int) (64_000 * more));
    }

    private static int packed(String svg) throws IOException {
        var out = new ByteArrayOutputStream();
        try (var gzip = new GZIPOutputStream(out)) {
            gzip.write(svg.getBytes(StandardCharsets.UTF_8));
        }
        return out.size();
    }
}
