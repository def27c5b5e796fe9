package org.hearthway.path;

import java.time.LocalDate;
import java.util.List;
import org.hearthway.base.Viewer;
import org.hearthway.path.ClinicValues.ChildEffect;

/** What it does to the plans of the clinic's children when it closes on one more day; for administrators. */
public interface ClosedDayEffects {

    /**
     * What would happen; nothing is saved.
     *
     * @param children those whose plans would change, each once whatever paths it is on
     * @param onPaths how many children are on a path
     * @param visits what is booked on the day: it stays until somebody moves it
     */
    record Preview(List<ChildEffect> children, int onPaths, List<VisitsOnDay.Standing> visits) {

        public Preview {
            children = List.copyOf(children);
            visits = List.copyOf(visits);
        }
    }

    /** If the clinic were closed on a day; nothing moves where it is closed already. */
    Preview ifClosed(Viewer viewer, LocalDate day);

    /** If it were open on a day again. */
    Preview ifOpened(Viewer viewer, LocalDate day);
}
