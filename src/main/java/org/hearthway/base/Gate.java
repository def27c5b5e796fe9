package org.hearthway.base;

/**
 * The one access decision. Declared here so that every module can ask; decided in {@code access}.
 * Denied unless granted.
 */
public interface Gate {

    /** Whether the viewer may do this to this child; asks without leaving a trace. */
    boolean allows(Viewer viewer, Action action, ChildId child);

    /** Whether the viewer may do this at the clinic at large; asks without leaving a trace. */
    boolean allows(Viewer viewer, Action action);

    /**
     * Passes silently or refuses.
     *
     * @throws NotAvailable when the viewer may not, or the child does not exist: the same answer for both.
     *     A refusal is written to the audit trail in a transaction of its own.
     */
    void require(Viewer viewer, Action action, ChildId child);

    /**
     * Passes silently or refuses.
     *
     * @throws NotAvailable when the viewer may not; the refusal is written to the audit trail.
     */
    void require(Viewer viewer, Action action);
}
