package org.hearthway.sign;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** The signs, and what families report after the call. A report never replaces the call. */
public interface Signs {

    /** Every sign that families may see, most urgent first; asks nobody, it stands on a page without sign-in. */
    List<Sign> all();

    /** The sign with this identifier. */
    Optional<Sign> find(String id);

    /**
     * Which topics concern a child, by its path. Those that concern everyone are always among them; while the child is
     * on no path nothing is ruled out, and all are.
     */
    Set<Sign.Topic> topics(Viewer viewer, ChildId child);

    /**
     * What a family says after it called.
     *
     * @param key made on the phone, so that a report sent twice counts once
     * @param signs identifiers of the signs; none for a note to the team
     * @param called whether the family called
     * @param note in the family's own words, at most 2000 characters; may be empty when a sign is named
     * @param teamOnly whether the child's other caregivers must not see it; a sign is never kept from them
     */
    record ReportData(UUID key, List<String> signs, boolean called, String note, boolean teamOnly) {
        public ReportData {
            signs = List.copyOf(signs);
            teamOnly = teamOnly && signs.isEmpty();
        }

        /** A report, or a note that all caregivers of the child may see. */
        public ReportData(UUID key, List<String> signs, boolean called, String note) {
            this(key, signs, called, note, false);
        }
    }

    /**
     * A report, or a note to the team when it names no sign.
     *
     * @param key the report's own
     * @param child about whom
     * @param signs in the words that the family saw then
     * @param urgency of the most urgent sign; empty for a note
     * @param called whether the family says it called
     * @param note in the family's own words
     * @param by who wrote it
     * @param at when it reached the clinic
     * @param read who of the team read it and when, if somebody has
     * @param teamOnly whether the writer keeps it from the child's other caregivers
     */
    record Report(
            UUID key,
            ChildId child,
            List<Sign> signs,
            Optional<Sign.Urgency> urgency,
            boolean called,
            String note,
            String by,
            Instant at,
            Optional<Read> read,
            boolean teamOnly) {
        public Report {
            signs = List.copyOf(signs);
        }

        /** One that all caregivers of the child may see. */
        public Report(
                UUID key,
                ChildId child,
                List<Sign> signs,
                Optional<Sign.Urgency> urgency,
                boolean called,
                String note,
                String by,
                Instant at,
                Optional<Read> read) {
            this(key, child, signs, urgency, called, note, by, at, read, false);
        }
    }

    /** Who of the team read it, by account and name, and when. */
    record Read(AccountId account, String by, Instant at) {}

    /**
     * Keeps a report; the same key twice counts once.
     *
     * @throws org.hearthway.base.Invalid naming field and bound: a note is at most 2000 characters, a sign must be
     *     known, and one of the two must be there
     */
    void report(Viewer viewer, ChildId child, ReportData data);

    /** Reports and notes about a child, newest first; to a caregiver, without what another one keeps for the team. */
    List<Report> of(Viewer viewer, ChildId child);

    /** Says that the viewer, of the team, has read it; the family sees it. The first to say so stands. */
    void read(Viewer viewer, ChildId child, UUID key);
}
