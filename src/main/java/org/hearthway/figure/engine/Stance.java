package org.hearthway.figure.engine;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One position of an exercise as its author wrote it: what is not said stays as in the position before.
 *
 * @param values angles in degrees and places in body heights, by {@link Pose#index}
 * @param contacts what touches what; empty keeps those of the position before
 * @param free movements that the contacts may also use
 * @param lock movements that they may not use
 * @param plant feet that stay where they are; empty means those that stand in both positions
 * @param balance feet over which the body's weight is drawn
 * @param stay joints that stay where they were in the position before
 */
public record Stance(
        Optional<Posture> posture,
        Map<Integer, Double> values,
        Optional<List<Contact>> contacts,
        Set<Integer> free,
        Set<Integer> lock,
        Optional<Set<Side>> plant,
        Set<Side> balance,
        List<String> stay) {

    public Stance {
        values = Map.copyOf(values);
        free = Set.copyOf(free);
        lock = Set.copyOf(lock);
        balance = Set.copyOf(balance);
        stay = List.copyOf(stay);
    }
}
