package org.hearthway.program.ui;

import com.vaadin.flow.server.VaadinSession;
import java.util.Optional;
import org.hearthway.base.ChildId;

/**
 * A program that a person marked to begin another child's with, kept until sign-out. It is no more than a place to look:
 * what stands there is read anew, by the person's rights at that moment.
 */
record MarkedProgram(ChildId child, int version) {

    /** What this person marked last. */
    static Optional<MarkedProgram> find() {
        return Optional.ofNullable(VaadinSession.getCurrent().getAttribute(MarkedProgram.class));
    }

    /** Marks it in place of what was marked before. */
    void keep() {
        VaadinSession.getCurrent().setAttribute(MarkedProgram.class, this);
    }
}
