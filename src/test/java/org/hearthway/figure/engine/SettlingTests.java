package org.hearthway.figure.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.figure.internal.ShippedFigures;
import org.junit.jupiter.api.Test;

/** Contacts solve the angles that the author left free. */
class SettlingTests {

    private static Stance stance(Posture posture, Map<Integer, Double> values, String... contacts) {
        return new Stance(
                Optional.of(posture),
                values,
                Optional.of(List.of(contacts).stream()
                        .flatMap(text -> Contact.parse(text).stream())
                        .toList()),
                Set.of(),
                Set.of(),
                Optional.empty(),
                Set.of(),
                List.of());
    }

    private static Picture picture(String id) {
        return new Picture(ShippedFigures.sheets().stream()
                .filter(sheet -> sheet.id().equals(id))
                .findFirst()
                .orElseThrow());
    }

    @Test
    void findsTheLeastSquaresOfAKnownValley() {
        // Rosenbrock 1960: the valley 10 (y - x^2), 1 - x has its only minimum at (1, 1)
        var found = LeastSquares.solve(new double[] {-1.2, 1}, x -> new double[] {10 * (x[1] - x[0] * x[0]), 1 - x[0]});
        assertThat(found[0]).isCloseTo(1, within(1e-4));
        assertThat(found[1]).isCloseTo(1, within(1e-4));
    }

    @Test
    void putsBothFeetOnTheFloorWhateverTheKnees() {
        var bent = Map.of(Pose.index(Side.RIGHT, Joint.KNEE), 30.0, Pose.index(Side.LEFT, Joint.KNEE), 10.0);
        var motion = new Motion(Proportions.at(6), List.of(), List.of(stance(Posture.STANDING, bent, "feet on floor")));
        assertThat(motion.worst()).isLessThan(.005);
    }

    @Test
    void closesAHandAroundAGripUnlessTheAuthorSaysOtherwise() {
        var walker = List.of(new Support(Support.Kind.WALKER, Map.of("at", .17)));
        var contacts = new String[] {"feet on floor", "R hand to grip.R"};
        var asWritten = new Motion(Proportions.at(6), walker, List.of(stance(Posture.STANDING, Map.of(), contacts)));
        assertThat(asWritten.at(0).get(Side.RIGHT, Joint.FINGERS)).isGreaterThan(80);
        assertThat(asWritten.at(0).get(Side.LEFT, Joint.FINGERS)).isZero();
        var flat = Map.of(Pose.index(Side.RIGHT, Joint.FINGERS), 10.0);
        var open = new Motion(Proportions.at(6), walker, List.of(stance(Posture.STANDING, flat, contacts)));
        assertThat(open.at(0).get(Side.RIGHT, Joint.FINGERS)).isEqualTo(10);
    }

    @Test
    void keepsFeetThatStandInBothPositionsWhereTheyAre() {
        var squat = picture("squat-table").scenery();
        for (double time : new double[] {1 / 3.0, 2 / 3.0, 1}) {
            for (var side : Side.values()) {
                var off = squat.body(time)
                        .leg(side)
                        .ball()
                        .minus(squat.body(0).leg(side).ball());
                assertThat(Math.hypot(off.x(), off.z())).isLessThan(.01);
            }
        }
    }

    /**
     * A body that rolls is carried by whatever is lowest. Towards the end it comes to lie on hip and shoulder as the author
     * wrote, which lifts the pelvis by less than a hundredth of the height; on the way there nothing else does.
     */
    @Test
    void liesOnTheMatWhileItRolls() {
        var roll = picture("roll-helper").scenery();
        for (int i = 0; i <= 10; i++) {
            var flesh = new Flesh(roll.body(i / 10.0));
            for (var ground : List.of(flesh.pelvisGround(), flesh.chestGround())) {
                double lowest = ground.stream().mapToDouble(Lump::lowest).min().orElseThrow();
                var onTheWay = i > 0 && i <= 6;
                assertThat(lowest).as("at %d tenths", i).isBetween(-.005, onTheWay ? .0025 : .0075);
            }
        }
    }

    /** Halfway up a step the foot is above its edge and not inside the wood. */
    @Test
    void liftsAFootThatGoesToAHigherPlace() {
        var step = picture("step-up").scenery();
        var ball = step.body(.5).leg(Side.LEFT).ball();
        assertThat(ball.y()).isGreaterThan(.05);
    }

    @Test
    void goesThroughMorePositionsThanTwo() {
        var up = stance(Posture.STANDING, Map.of(Pose.index(Side.RIGHT, Joint.SHOULDER), 90.0), "feet on floor");
        var down = stance(Posture.STANDING, Map.of(Pose.index(Side.RIGHT, Joint.SHOULDER), 0.0), "feet on floor");
        var motion = new Motion(Proportions.at(6), List.of(), List.of(down, up, down));
        assertThat(motion.at(.5).get(Side.RIGHT, Joint.SHOULDER)).isCloseTo(90, within(1e-6));
        assertThat(motion.at(.25).get(Side.RIGHT, Joint.SHOULDER)).isCloseTo(45, within(1e-6));
        assertThat(motion.at(1).get(Side.RIGHT, Joint.SHOULDER)).isCloseTo(0, within(1e-6));
    }
}
