package org.hearthway.clinic.events;

import java.time.LocalDate;
import org.hearthway.base.Viewer;

/**
 * An administrator closed the clinic on a day, or opened it again.
 *
 * @param by on whose behalf
 * @param day which day
 * @param closed whether it is closed now
 */
public record ClosedDaySaid(Viewer by, LocalDate day, boolean closed) {}
