package org.hearthway.equipment;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.base.ChildId;
import org.hearthway.base.Viewer;

/** Each child's series of casts. */
public interface Casts {

    /** All series of a child, newest first; for anyone who may see the family's pages of it. */
    List<CastSeries> of(Viewer viewer, ChildId child);

    /** What a family reads about a cast; empty when the content has no such kind. */
    Optional<Kind> kind();

    /**
     * Enters a series.
     *
     * @throws org.hearthway.base.Invalid naming field, bound and way out
     */
    UUID enter(Viewer viewer, ChildId child, CastSeries.Data data);

    /**
     * Enters a series anew, with a cast more or a slip put right.
     *
     * @param seen the version that the person saw
     * @throws org.hearthway.base.Invalid naming field, bound and way out
     * @throws org.hearthway.base.Overtaken when somebody else saved in between
     */
    void change(Viewer viewer, ChildId child, UUID series, CastSeries.Data data, long seen);
}
