package org.hearthway.demo;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import org.hearthway.base.Viewer;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Devices;
import org.hearthway.child.Helpers;
import org.hearthway.child.Homes;
import org.hearthway.child.Households;
import org.hearthway.choosing.Choosing;
import org.hearthway.clinic.ClinicCalendar;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.equipment.Casts;
import org.hearthway.equipment.Equipment;
import org.hearthway.medicine.Medicines;
import org.hearthway.medicine.Tapers;
import org.hearthway.medicine.ToxinSessions;
import org.hearthway.paper.EmergencySheets;
import org.hearthway.path.Plans;
import org.hearthway.program.ExerciseLibrary;
import org.hearthway.program.FamilyTimes;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.Programs;
import org.hearthway.pump.PumpBook;
import org.hearthway.sign.Signs;
import org.hearthway.stimulator.Stimulators;
import org.hearthway.surveillance.Surveillance;
import org.hearthway.task.Tasks;
import org.hearthway.visit.Visits;
import org.springframework.stereotype.Component;

/** The services through which a story is lived. */
@Component
@DemoProfile
record ChildhoodFactory(
        ChildRegister register,
        Households households,
        Homes homes,
        Helpers helpers,
        Plans plans,
        Devices devices,
        PumpBook pumps,
        Stimulators stimulators,
        EmergencySheets sheets,
        Programs programs,
        ExerciseLibrary library,
        HomeWeek week,
        FamilyTimes times,
        Visits visits,
        Tasks tasks,
        Medicines medicines,
        Tapers tapers,
        ToxinSessions toxin,
        Signs signs,
        Equipment equipment,
        Casts casts,
        Surveillance surveillance,
        Choosing choosing,
        ClinicCalendar calendar,
        ClinicSettings clinic) {

    Childhood of(Story story, Map<String, Viewer.Person> persons, LocalDate today, Instant now) {
        return new Childhood(this, story, persons, today, now);
    }
}
