package org.hearthway.access;

import java.util.Optional;
import org.hearthway.base.Viewer;

/** Who is signed in on this thread: the edge where a sign-in becomes an explicit viewer. */
public interface SignedIn {

    /** The signed-in person, read afresh so that a lost role counts at once. */
    Optional<Viewer.Person> person();

    /**
     * The signed-in person.
     *
     * @throws org.hearthway.base.NotAvailable when nobody is
     */
    default Viewer.Person require() {
        return person().orElseThrow(org.hearthway.base.NotAvailable::new);
    }
}
