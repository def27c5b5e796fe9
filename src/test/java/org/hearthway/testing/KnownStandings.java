package org.hearthway.testing;

import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;
import org.hearthway.child.Standing;
import org.hearthway.child.Standings;
import org.hearthway.child.Status;

/** Standings kept in memory: every child is active unless the test says otherwise. */
public final class KnownStandings implements Standings {

    private final Map<ChildId, Status> known = new HashMap<>();

    /** Says where a child stands. */
    public void put(ChildId child, Status status) {
        known.put(child, status);
    }

    @Override
    public Standing now(Viewer viewer, ChildId child) {
        return new Standing(
                0,
                hold(viewer, child),
                Instant.EPOCH,
                Optional.empty(),
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    @Override
    public List<Pause> pauses(Viewer viewer, ChildId child) {
        return hold(viewer, child).asksTheFamily() ? List.of() : List.of(new Pause(LocalDate.EPOCH, Optional.empty()));
    }

    @Override
    public Status hold(Viewer viewer, ChildId child) {
        return known.getOrDefault(child, Status.ACTIVE);
    }

    @Override
    public List<Standing> history(Viewer viewer, ChildId child) {
        return List.of();
    }

    @Override
    public Map<ChildId, Status> notActive(Viewer viewer) {
        return known.entrySet().stream()
                .filter(entry -> entry.getValue() != Status.ACTIVE)
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    @Override
    public Set<ChildId> waiting(Viewer viewer) {
        return Set.of();
    }

    @Override
    public void say(Viewer viewer, ChildId child, Saying saying, long seen) {
        put(child, saying.status());
    }

    @Override
    public void confirm(Viewer viewer, ChildId child, long seen) {
        throw new UnsupportedOperationException();
    }

    @Override
    public void takeBack(Viewer viewer, ChildId child, String reason, long seen) {
        known.remove(child);
    }
}
