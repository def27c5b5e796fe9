package org.hearthway.reminder.internal;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthway.base.ChildId;
import org.hearthway.equipment.Equipment;
import org.hearthway.equipment.Item;
import org.hearthway.medicine.Tapers;
import org.hearthway.surveillance.Surveillance;
import org.springframework.stereotype.Component;

/** The days that follow from what the child wears and uses, the rhythms of its checks, its taper calendars. */
@Component
class KnownDueDays implements DueDays {

    private final Equipment equipment;
    private final Surveillance surveillance;
    private final Tapers tapers;

    KnownDueDays(Equipment equipment, Surveillance surveillance, Tapers tapers) {
        this.equipment = equipment;
        this.surveillance = surveillance;
        this.tapers = tapers;
    }

    @Override
    public Set<LocalDate> atHome(ChildId child) {
        return equipment.of(Family.MACHINE, child).stream()
                .flatMap(item -> Arrays.stream(Item.What.values()).flatMap(what -> item.due(what).stream()))
                .collect(Collectors.toSet());
    }

    @Override
    public Set<LocalDate> steps(ChildId child) {
        return tapers.changeDays(Family.MACHINE, child);
    }

    /** A family is written to once a first check was recorded here; before, the team has to find out what was done. */
    @Override
    public List<Check> checks(ChildId child) {
        return surveillance.outlook(Family.MACHINE, child).stream()
                .filter(outlook -> outlook.last().isPresent())
                .flatMap(outlook -> outlook.next().stream()
                        .map(due -> new Check(outlook.matter().visitKind(), due.by())))
                .toList();
    }
}
