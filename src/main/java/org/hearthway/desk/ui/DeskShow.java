package org.hearthway.desk.ui;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.hearthway.desk.Board.Group;

/** Which groups are shown. */
enum DeskShow {
    ALL(Optional.empty()),
    GOING_OUT(Optional.of(Group.GOING_OUT)),
    WAITING(Optional.of(Group.WAITING)),
    NOT_REACHED(Optional.of(Group.NOT_REACHED)),
    TO_BOOK(Optional.of(Group.TO_BOOK));

    private final Optional<Group> group;

    DeskShow(Optional<Group> group) {
        this.group = group;
    }

    boolean shows(Group other) {
        return group.isEmpty() || group.get() == other;
    }

    /** As it stands in an address. */
    String inAddress() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static DeskShow of(Optional<String> inAddress) {
        return Arrays.stream(values())
                .filter(show -> inAddress.filter(show.inAddress()::equals).isPresent())
                .findFirst()
                .orElse(ALL);
    }
}
