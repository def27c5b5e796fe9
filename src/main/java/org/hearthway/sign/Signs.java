package org.hearthway.sign;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** The signs, and what families report after the call. A report never replaces the call. */
public interface Signs {

    /** Every sign that families may see, most urgent first; asks nobody, it stands on a page without sign-in. */
    List<Sign> all();

    /** The sign with this identifier. */
    Optional<Sign> find(String id);

    /** Which topics concern a child, by its path: always {@code ANY_CHILD}. */
    Set<Sign.Topic> topics(Viewer viewer, ChildId child);

    /** What a family says after it called. */
    record ReportData(UUID key, List<String> signs, boolean called, String note) {
        public ReportData {
            signs = List.copyOf(signs);
        }
    }

    /** A report, or a note to the team when it names no sign. */
    record Report(
            UUID key,
            ChildId child,
            List<Sign> signs,
            Optional<Sign.Urgency> urgency,
            boolean called,
            String note,
            String by,
            Instant at,
            Optional<Read> read) {
        public Report {
            signs = List.copyOf(signs);
        }
    }

    /** Who of the team read it and when. */
    record Read(String by, Instant at) {}

    /**
     * Keeps a report; the same key twice counts once.
     *
     * @throws org.hearthway.base.Invalid naming field and bound: a note is at most 2000 characters
     */
    void report(Viewer viewer, ChildId child, ReportData data);

    /** Reports and notes about a child, newest first. */
    List<Report> of(Viewer viewer, ChildId child);

    /** Says that the viewer, of the team, has read it; the family sees it. */
    void read(Viewer viewer, ChildId child, UUID key);
}
