package org.hearthway.figure.engine;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The floor and what stands on it. */
public record Room(List<Support> supports, Proportions size) {

    public Room {
        supports = List.copyOf(supports);
    }

    /** Height of a surface in body heights; empty when nothing here has it. */
    public OptionalDouble height(String surface) {
        if (surface.equals("floor")) {
            return OptionalDouble.of(0);
        }
        return supports.stream()
                .map(s -> s.surface(surface, size))
                .filter(OptionalDouble::isPresent)
                .findFirst()
                .orElse(OptionalDouble.empty());
    }

    /** Where the wall's face is. */
    OptionalDouble wall() {
        return supports.stream()
                .filter(s -> s.kind() == Support.Kind.WALL)
                .mapToDouble(s -> s.get("at", .4))
                .findFirst();
    }

    Optional<Vec> anchor(String name) {
        return supports.stream().flatMap(s -> s.anchor(name, size).stream()).findFirst();
    }

    /**
     * What a contact names that is not there.
     *
     * @return the name, or empty when all of it is there
     */
    public Optional<String> missing(Contact contact) {
        var target = contact.target();
        boolean there = switch (contact.kind()) {
            case ON -> height(target).isPresent();
            case AT -> target.equals("wall") && wall().isPresent();
            case TO -> anchor(target).isPresent() || Grasp.isPoint(target) || Grasp.isPart(target);
        };
        return there ? Optional.empty() : Optional.of(target);
    }
}
