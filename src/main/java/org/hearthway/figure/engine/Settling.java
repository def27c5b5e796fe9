package org.hearthway.figure.engine;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Brings a body into contact with what it lies on, stands on and holds, as near to the author's angles as that goes.
 */
final class Settling {

    private final Proportions size;
    private final Room room;
    private final double scale;
    private final List<Contact> contacts;
    private final Map<Side, Vec> planted = new EnumMap<>(Side.class);
    private final Map<Contact.Place, Vec> staying = new LinkedHashMap<>();
    private Set<Integer> free = Set.of();
    private Set<Integer> lock = Set.of();
    private Set<Side> balance = Set.of();
    private @Nullable Body child;
    private @Nullable Vec pull;
    private boolean rolling;
    private boolean headRolls;

    /** A body of these proportions; lengths of the room are divided by the scale. */
    Settling(Proportions size, Room room, double scale, List<Contact> contacts) {
        this.size = size;
        this.room = room;
        this.scale = scale;
        this.contacts = contacts;
    }

    Settling using(Set<Integer> free, Set<Integer> lock) {
        this.free = free;
        this.lock = lock;
        return this;
    }

    Settling balancedOver(Set<Side> feet) {
        balance = feet;
        return this;
    }

    Settling planted(Side side, Vec ball) {
        planted.put(side, ball);
        return this;
    }

    Settling staying(String part, Body before) {
        for (var place : Contact.bodyPart(part)) {
            staying.put(place, middle(before, place));
        }
        return this;
    }

    /** For a helper: whom the hands hold, and where the hips are wished. */
    Settling helping(Body child, Vec hips) {
        this.child = child;
        this.pull = hips;
        return this;
    }

    /** Whatever of pelvis and chest is lowest stays on the ground. */
    Settling rolling(boolean withHead) {
        rolling = true;
        headRolls = withHead;
        return this;
    }

    private static Vec middle(Body body, Contact.Place place) {
        return place.part().lumps(body, place.side()).get(0).middle();
    }

    Pose settle(Pose wish) {
        var prices = new TreeMap<>(Unknowns.of(
                contacts, planted.keySet(), free, lock, wish.base().u().y() < .5));
        for (var place : staying.keySet()) {
            List.of(Joint.HIP, Joint.KNEE, Joint.HIP_ABD, Joint.HIP_ROT)
                    .forEach(joint -> prices.merge(Pose.index(place.side(), joint), .02, Math::min));
        }
        if (pull != null) {
            prices.put(Pose.index(Axis.Z), .02);
            prices.merge(Pose.index(Axis.TRUNK), .02, Math::min);
        }
        var indices = prices.keySet().stream().mapToInt(Integer::intValue).toArray();
        var costs = prices.values().stream().mapToDouble(Double::doubleValue).toArray();
        var begin = lowered(wish);
        var x = new double[indices.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = begin.get(indices[i]) / unit(indices[i]);
        }
        var solved = LeastSquares.solve(x, now -> residuals(wish, posed(begin, indices, now), indices, costs));
        return posed(begin, indices, solved);
    }

    private static double unit(int index) {
        return Pose.isPlace(index) ? 1 : Unknowns.SCALE;
    }

    private static Pose posed(Pose from, int[] indices, double[] x) {
        var pose = from;
        for (int i = 0; i < indices.length; i++) {
            pose = pose.with(indices[i], x[i] * unit(indices[i]));
        }
        return pose;
    }

    /** Set down onto what it is on, before anything bends. */
    private Pose lowered(Pose wish) {
        var body = new Body(wish, size);
        double sum = 0;
        int count = 0;
        for (var contact : contacts) {
            if (contact.kind() == Contact.Kind.ON) {
                for (double gap : gaps(contact, body)) {
                    sum += gap;
                    count++;
                }
            }
        }
        return count == 0 ? wish : wish.with(Pose.index(Axis.Y), wish.get(Axis.Y) - sum / count);
    }

    /** How far each contact is from being kept, in body heights of the child: 0 is kept. */
    double worst(Pose pose) {
        var body = new Body(pose, size);
        return contacts.stream()
                .flatMapToDouble(c -> java.util.Arrays.stream(gaps(c, body)))
                .map(gap -> Math.abs(gap) * scale)
                .max()
                .orElse(0);
    }

    private double[] gaps(Contact contact, Body body) {
        var lumps = contact.part().lumps(body, contact.side());
        return switch (contact.kind()) {
            case ON -> {
                double top = room.height(contact.target()).orElse(0) / scale;
                yield lumps.stream().mapToDouble(lump -> lump.lowest() - top).toArray();
            }
            case AT -> {
                double face = room.wall().orElse(0) / scale;
                yield lumps.stream()
                        .mapToDouble(lump -> lump.rightmost() - face)
                        .toArray();
            }
            case TO -> {
                var off = lumps.get(0).middle().minus(target(contact.target(), body));
                yield new double[] {off.x(), off.y(), off.z()};
            }
        };
    }

    private Vec target(String name, Body self) {
        if (Grasp.isPoint(name)) {
            return Grasp.point(name).times(1 / scale);
        }
        var anchor = room.anchor(name);
        if (anchor.isPresent()) {
            return anchor.get().times(1 / scale);
        }
        var of = Grasp.isOfTheChild(name) ? Optional.ofNullable(child).orElse(self) : self;
        return Grasp.on(of, name).times(of == self ? 1 : 1 / scale);
    }

    private double[] residuals(Pose wish, Pose pose, int[] indices, double[] costs) {
        var body = new Body(pose, size);
        var all = new ArrayList<Double>();
        for (var contact : contacts) {
            for (double gap : gaps(contact, body)) {
                all.add(gap);
            }
        }
        planted.forEach((side, ball) -> {
            var off = body.leg(side).ball().minus(ball);
            all.add(off.x());
            all.add(off.z());
        });
        staying.forEach((place, where) -> {
            var off = middle(body, place).minus(where);
            all.addAll(List.of(off.x(), off.y(), off.z()));
        });
        for (var side : Side.values()) {
            for (var lump : mustNotSink(body, side)) {
                all.add(Math.min(0, lump.lowest() + .004));
            }
        }
        if (!balance.isEmpty()) {
            all.add(.3 * (Weight.middle(body).x() - Weight.over(body, balance)));
        }
        if (pull != null) {
            var off = body.hip.minus(pull);
            all.add(.06 * off.x());
            all.add(.06 * off.z());
        }
        if (rolling) {
            var flesh = new Flesh(body);
            all.add(ground(flesh.pelvisGround()));
            all.add(ground(flesh.chestGround()));
            all.add(headRolls ? flesh.skull().lowest() : 0);
        }
        for (int i = 0; i < indices.length; i++) {
            double value = pose.get(indices[i]);
            all.add((value - wish.get(indices[i])) / unit(indices[i]) * costs[i]);
            double beyond = Math.max(0, value - Pose.max(indices[i])) + Math.max(0, Pose.min(indices[i]) - value);
            all.add(beyond / unit(indices[i]));
        }
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static List<Lump> mustNotSink(Body body, Side side) {
        var lumps = new ArrayList<>(Part.FOOT.lumps(body, side));
        lumps.add(Lump.ball(body.leg(side).toe(), .011));
        lumps.addAll(Part.ELBOW.lumps(body, side));
        lumps.addAll(Part.FINGERS.lumps(body, side));
        return lumps;
    }

    /** The lowest of them, smoothed so that the body rolls from one to the next without a jerk. */
    private static double ground(List<Lump> lumps) {
        double sharp = 250;
        double sum = lumps.stream()
                .mapToDouble(l -> StrictMath.exp(-sharp * l.lowest()))
                .sum();
        return -StrictMath.log(sum) / sharp;
    }
}
