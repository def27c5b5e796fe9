package org.hearthway.figure.engine;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The body's way from the first position of an exercise to its last, in contact all the way. */
public final class Motion {

    /** A position, settled. */
    private record Settled(Stance stance, Pose pose, List<Contact> contacts, Settling settling) {}

    private final Proportions size;
    private final Room room;
    private final List<Settled> stops = new ArrayList<>();

    /** Settles the positions in turn. */
    public Motion(Proportions size, List<Support> supports, List<Stance> stances) {
        this.size = size;
        this.room = new Room(supports, size);
        stances.forEach(this::add);
    }

    private void add(Stance stance) {
        var before = stops.isEmpty() ? Optional.<Settled>empty() : Optional.of(stops.get(stops.size() - 1));
        var posture = stance.posture().orElse(Posture.STANDING);
        var wish = before.map(Settled::pose).orElseGet(() -> Pose.of(posture));
        if (before.isPresent() && stance.posture().isPresent()) {
            wish = wish.in(posture.frame()).with(Pose.index(Axis.Y), posture.height);
        }
        var contacts =
                stance.contacts().orElseGet(() -> before.map(Settled::contacts).orElse(List.of()));
        wish = gripping(wish, contacts);
        for (var value : stance.values().entrySet()) {
            wish = wish.with(value.getKey(), value.getValue());
        }
        var settling = new Settling(size, room, 1, contacts).using(stance.free(), stance.lock());
        before.ifPresent(was -> {
            var body = new Body(was.pose, size);
            planted(was, stance, contacts)
                    .forEach(side -> settling.planted(side, body.leg(side).ball()));
            stance.stay().forEach(part -> settling.staying(part, body));
        });
        settling.balancedOver(balance(stance, contacts));
        stops.add(new Settled(stance, settling.settle(wish), contacts, settling));
    }

    /** A hand closes around what it holds, unless its author says otherwise. */
    private Pose gripping(Pose wish, List<Contact> contacts) {
        var pose = wish;
        for (var contact : contacts) {
            if (contact.part() == Part.HAND && room.anchor(contact.target()).isPresent()) {
                pose = pose.with(Pose.index(contact.side(), Joint.FINGERS), 88)
                        .with(Pose.index(contact.side(), Joint.THUMB), 65);
            }
        }
        return pose;
    }

    private static Set<Side> planted(Settled was, Stance stance, List<Contact> contacts) {
        return stance.plant().orElseGet(() -> {
            var sides = EnumSet.noneOf(Side.class);
            for (var side : Side.values()) {
                if (stands(was.contacts, side) && stands(contacts, side)) {
                    sides.add(side);
                }
            }
            return sides;
        });
    }

    private static boolean stands(List<Contact> contacts, Side side) {
        return contacts.stream()
                .anyMatch(c -> c.side() == side
                        && c.kind() == Contact.Kind.ON
                        && (c.part() == Part.FOOT || c.part() == Part.TOES));
    }

    /** Who stands on the feet alone must not be about to fall. */
    private static Set<Side> balance(Stance stance, List<Contact> contacts) {
        var feet = new LinkedHashSet<Side>(stance.balance());
        boolean alone = contacts.stream().allMatch(c -> c.part() == Part.FOOT || c.part() == Part.TOES);
        if (alone) {
            contacts.forEach(c -> feet.add(c.side()));
        }
        return feet;
    }

    int stops() {
        return stops.size();
    }

    Room room() {
        return room;
    }

    Proportions size() {
        return size;
    }

    /** The largest distance of a contact of any position from being kept, in body heights. */
    double worst() {
        return stops.stream().mapToDouble(s -> s.settling.worst(s.pose)).max().orElse(0);
    }

    List<Contact> contacts(int stop) {
        return stops.get(stop).contacts;
    }

    /** The pose at a time from 0, the first position, to 1, the last. */
    public Pose at(double time) {
        double place = Math.max(0, Math.min(1, time)) * (stops.size() - 1);
        int first = Math.min((int) place, stops.size() - 1);
        double part = place - first;
        if (part < 1e-9) {
            return stops.get(first).pose;
        }
        return between(stops.get(first), stops.get(first + 1), part);
    }

    private Pose between(Settled from, Settled to, double part) {
        var wish = swung(from, to, part, from.pose.between(to.pose, part));
        var shared = from.contacts.stream().filter(to.contacts::contains).toList();
        var free = new LinkedHashSet<>(from.stance.free());
        free.addAll(to.stance.free());
        var lock = new LinkedHashSet<>(from.stance.lock());
        lock.addAll(to.stance.lock());
        free.addAll(leaning(from, to));
        var settling = new Settling(size, room, 1, shared).using(free, lock);
        var body = new Body(from.pose, size);
        planted(from, to.stance, to.contacts)
                .forEach(side -> settling.planted(side, body.leg(side).ball()));
        to.stance.stay().forEach(one -> settling.staying(one, body));
        if (rolls(from, to)) {
            settling.using(with(free, Axis.LEAN, Axis.NECK_SIDE), lock)
                    .rolling(from.contacts.stream().anyMatch(c -> c.part() == Part.HEAD));
        }
        return settling.settle(wish);
    }

    /** Arms that lean on something in one position may give way to the ground on the way to the other. */
    private static Set<Integer> leaning(Settled from, Settled to) {
        var free = new LinkedHashSet<Integer>();
        for (var stop : List.of(from, to)) {
            stop.contacts.stream()
                    .filter(contact -> contact.part().isOfArm() && contact.kind() == Contact.Kind.ON)
                    .forEach(contact -> {
                        free.add(Pose.index(contact.side(), Joint.SHOULDER));
                        free.add(Pose.index(contact.side(), Joint.ELBOW));
                    });
        }
        return free;
    }

    private static Set<Integer> with(Set<Integer> free, Axis... more) {
        var all = new LinkedHashSet<>(free);
        for (var axis : more) {
            all.add(Pose.index(axis));
        }
        return all;
    }

    /** Who turns while upright does not roll. */
    private static boolean rolls(Settled from, Settled to) {
        return from.pose.base().u().y() < .5 && Math.abs(to.pose.get(Axis.TURN) - from.pose.get(Axis.TURN)) > 15;
    }

    /** A foot that goes from one place to the next is lifted on its way. */
    private static Pose swung(Settled from, Settled to, double part, Pose wish) {
        Map<Side, Double> lifts = new LinkedHashMap<>();
        for (var side : Side.values()) {
            boolean moves = stands(from.contacts, side)
                    && stands(to.contacts, side)
                    && to.stance.plant().filter(p -> !p.contains(side)).isPresent();
            if (moves && to.pose.get(side, Joint.HIP) > from.pose.get(side, Joint.HIP) - 12) {
                lifts.put(side, 4 * part * (1 - part));
            }
        }
        var pose = wish;
        for (var lift : lifts.entrySet()) {
            int hip = Pose.index(lift.getKey(), Joint.HIP);
            int knee = Pose.index(lift.getKey(), Joint.KNEE);
            pose = pose.with(hip, pose.get(hip) + 16 * lift.getValue())
                    .with(knee, pose.get(knee) + 34 * lift.getValue());
        }
        return pose;
    }
}
