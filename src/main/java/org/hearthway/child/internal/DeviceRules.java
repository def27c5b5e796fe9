package org.hearthway.child.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.child.Device;

/** What may be entered about a device; the field of a problem ends with the place of the part, from 0. */
final class DeviceRules {

    private static final int SERIAL = 60;
    private static final int OLDEST_YEARS = 25;
    private static final int MOST_PARTS = 12;

    private DeviceRules() {}

    static void check(Device.Kind kind, List<Device.Part> parts, LocalDate today) {
        var problems = new ArrayList<Problem>();
        if (parts.isEmpty() || parts.size() > MOST_PARTS) {
            problems.add(Problem.at("parts", "child.problem.parts", MOST_PARTS));
        }
        for (var place = 0; place < parts.size(); place++) {
            check(kind, parts.get(place), place, today, problems);
        }
        Invalid.ifAny(problems);
    }

    private static void check(Device.Kind kind, Device.Part part, int place, LocalDate today, List<Problem> problems) {
        if (!kind.parts().contains(part.what())) {
            problems.add(Problem.at("what" + place, "child.problem.part-kind"));
        }
        if (part.serial().isBlank() || part.serial().strip().length() > SERIAL) {
            problems.add(Problem.at("serial" + place, "child.problem.serial", SERIAL));
        }
        if (part.implanted().isAfter(today) || part.implanted().isBefore(today.minusYears(OLDEST_YEARS))) {
            problems.add(Problem.at("implanted" + place, "child.problem.implanted", OLDEST_YEARS));
        }
        if (part.removed()
                .filter(out -> out.isAfter(today) || out.isBefore(part.implanted()))
                .isPresent()) {
            problems.add(Problem.at("removed" + place, "child.problem.removed"));
        }
    }
}
