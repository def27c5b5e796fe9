package org.hearthway.path.ui;

import com.vaadin.flow.router.QueryParameters;
import java.util.ArrayList;
import java.util.Optional;
import org.hearthway.base.ChildId;

/**
 * What a page of a child's paths shows, as it stands in its address.
 *
 * @param path the path that is chosen; empty for the first that has the stage
 * @param stage the stage that is chosen, {@code stage/2} for its second time
 * @param zoom how near the time line is drawn
 * @param comparing whether each date stands beside the one of the path alone
 */
record PathAddress(ChildId child, Optional<String> path, Optional<String> stage, Zoom zoom, boolean comparing) {

    private static final String STAGE = "stage";
    private static final String PATH = "path";
    private static final String ZOOM = "zoom";
    private static final String COMPARE = "compare";

    static PathAddress of(ChildId child, QueryParameters asked) {
        return new PathAddress(
                child,
                asked.getSingleParameter(PATH),
                asked.getSingleParameter(STAGE),
                Zoom.of(asked.getSingleParameter(ZOOM)),
                asked.getSingleParameter(COMPARE).isPresent());
    }

    /** The same page with a stage of a path chosen. */
    PathAddress at(String path, String stage) {
        return new PathAddress(child, Optional.of(path), Optional.of(stage), zoom, comparing);
    }

    /** The same page with no stage chosen. */
    PathAddress withoutStage() {
        return new PathAddress(child, Optional.empty(), Optional.empty(), zoom, comparing);
    }

    /** The same page drawn nearer or farther. */
    PathAddress nearer(Zoom other) {
        return new PathAddress(child, path, stage, other, comparing);
    }

    /** The same page with or without the path alone beside it. */
    PathAddress comparing(boolean other) {
        return new PathAddress(child, path, stage, zoom, other);
    }

    /** As a link has it. */
    String link() {
        var asked = new ArrayList<String>();
        path.ifPresent(id -> asked.add(PATH + "=" + id));
        stage.ifPresent(id -> asked.add(STAGE + "=" + id));
        if (zoom != Zoom.ALL) {
            asked.add(ZOOM + "=" + zoom.inAddress());
        }
        if (comparing) {
            asked.add(COMPARE + "=yes");
        }
        var page = "staff/child/" + child + "/path";
        return asked.isEmpty() ? page : page + "?" + String.join("&", asked);
    }
}
