package org.hearthway.parts;

import com.vaadin.flow.component.Component;
import java.time.LocalDate;
import org.hearthway.base.Viewer;

/** Draws what closing the clinic on one more day does, before it is done; the part that keeps plans draws it. */
public interface ClosedDayPreview {

    /** What would move if the clinic were closed on the day, and what is booked on it. */
    Component closing(Viewer.Person viewer, LocalDate day);

    /** The same if it were open again. */
    Component opening(Viewer.Person viewer, LocalDate day);
}
