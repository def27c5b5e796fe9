package org.hearthway.clinic;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Set;

/**
 * What a clinic must say about itself. A real clinic starts only when all of it is set
 * ({@code hearthway.clinic.*}); the demo's stand in {@code content/demo}.
 *
 * @param name the clinic's name on the screens
 * @param senderName neutral name that messages carry; must not tell the condition
 * @param senderAddress address that messages come from
 * @param zone where the clinic's clock stands
 * @param emergencyNumber number for life and limb
 * @param urgentLine the clinic's line that is answered day and night
 * @param officeLine the clinic's line in office hours
 * @param officeDays days the office answers
 * @param officeOpens first minute of office hours
 * @param officeCloses first minute after office hours
 * @param baseUrl address under which families reach the program; links begin with it
 * @param demo whether this is the demo clinic
 */
public record ClinicSettings(
        String name,
        String senderName,
        String senderAddress,
        ZoneId zone,
        String emergencyNumber,
        String urgentLine,
        String officeLine,
        Set<DayOfWeek> officeDays,
        LocalTime officeOpens,
        LocalTime officeCloses,
        String baseUrl,
        boolean demo) {

    public ClinicSettings {
        officeDays = Set.copyOf(officeDays);
    }
}
