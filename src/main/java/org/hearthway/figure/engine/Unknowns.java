package org.hearthway.figure.engine;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Which movements the contacts may use, and how dearly each is bought: the author's angle is the wish. */
final class Unknowns {

    /** Angles are divided by this, so that they weigh like lengths. */
    static final double SCALE = 40;

    private final Map<Integer, Double> price = new TreeMap<>();

    /** Of the whole body only the place, unless the author frees more. */
    static Map<Integer, Double> of(
            Collection<Contact> contacts,
            Collection<Side> planted,
            Set<Integer> free,
            Set<Integer> lock,
            boolean lying) {
        var unknowns = new Unknowns();
        unknowns.may(Pose.index(Axis.X), .02);
        unknowns.may(Pose.index(Axis.Y), 1e-4);
        contacts.forEach(contact -> unknowns.forContact(contact, lying));
        planted.forEach(side -> unknowns.may(Pose.index(side, Joint.HIP_ABD), .03));
        free.forEach(index -> unknowns.may(index, .004));
        lock.forEach(unknowns.price::remove);
        return unknowns.price;
    }

    private void may(int index, double price) {
        this.price.merge(index, price, Math::min);
    }

    private void forContact(Contact contact, boolean lying) {
        if (!contact.part().isSided()) {
            return;
        }
        if (Grasp.isOfTheChild(contact.target())) {
            may(Pose.index(contact.side(), Joint.WRIST), .02);
        }
        for (var joint : joints(contact, lying)) {
            may(Pose.index(contact.side(), joint), price(joint));
        }
    }

    private static List<Joint> joints(Contact contact, boolean lying) {
        var aside = contact.kind() == Contact.Kind.TO || lying;
        return switch (contact.part()) {
            case FOOT ->
                aside
                        ? List.of(Joint.HIP, Joint.KNEE, Joint.ANKLE, Joint.HIP_ABD)
                        : List.of(Joint.HIP, Joint.KNEE, Joint.ANKLE);
            case TOES -> List.of(Joint.HIP, Joint.KNEE, Joint.ANKLE, Joint.TOES);
            case KNEE, SHIN -> List.of(Joint.HIP, Joint.KNEE, Joint.ANKLE);
            case ANKLE -> lying ? List.of(Joint.HIP, Joint.KNEE, Joint.HIP_ABD) : List.of(Joint.HIP, Joint.KNEE);
            case INSTEP, HEEL, CALF -> List.of(Joint.HIP, Joint.KNEE);
            case THIGH -> List.of(Joint.HIP);
            case HAND, PALM, FINGERS, WRIST, ELBOW, FOREARM ->
                aside
                        ? List.of(Joint.SHOULDER, Joint.ELBOW, Joint.SHOULDER_ABD, Joint.SHOULDER_ROT)
                        : List.of(Joint.SHOULDER, Joint.ELBOW);
            default -> List.of();
        };
    }

    private static double price(Joint joint) {
        return switch (joint) {
            case HIP, KNEE -> .02;
            case ANKLE, TOES -> .003;
            case SHOULDER, ELBOW -> .008;
            default -> .010;
        };
    }
}
