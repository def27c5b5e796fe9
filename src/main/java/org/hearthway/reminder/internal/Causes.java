package org.hearthway.reminder.internal;

import org.hearthway.base.Change;
import org.hearthway.base.ChildId;
import org.hearthway.child.events.CaregiverLinked;
import org.hearthway.child.events.CaregiverUnlinked;
import org.hearthway.child.events.ChildCorrected;
import org.hearthway.child.events.DeviceRecorded;
import org.hearthway.equipment.events.EquipmentRecorded;
import org.hearthway.medicine.events.MedicineChanged;
import org.hearthway.medicine.events.MedicineConfirmed;
import org.hearthway.medicine.events.TaperConfirmed;
import org.hearthway.medicine.events.TaperSigned;
import org.hearthway.path.events.PathChanged;
import org.hearthway.pump.events.PumpEntered;
import org.hearthway.pump.events.PumpEntryChecked;
import org.hearthway.surveillance.events.CheckRecorded;
import org.hearthway.task.events.TaskGiven;
import org.hearthway.task.events.TaskWorked;
import org.hearthway.visit.VisitId;
import org.hearthway.visit.events.VisitAnswered;
import org.hearthway.visit.events.VisitAttended;
import org.hearthway.visit.events.VisitBooked;
import org.hearthway.visit.events.VisitCancelled;
import org.hearthway.visit.events.VisitMoved;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Hears, inside the transaction of the change, what reminders follow from. */
@Component
class Causes {

    private final Planning planning;

    Causes(Planning planning) {
        this.planning = planning;
    }

    @EventListener
    void on(VisitBooked booked) {
        visit(booked.child(), new VisitId(booked.visit()));
    }

    @EventListener
    void on(VisitMoved moved) {
        visit(moved.child(), new VisitId(moved.visit()));
    }

    @EventListener
    void on(VisitCancelled cancelled) {
        visit(cancelled.child(), new VisitId(cancelled.visit()));
    }

    @EventListener
    void on(VisitAnswered answered) {
        visit(answered.child(), new VisitId(answered.visit()));
    }

    @EventListener
    void on(VisitAttended attended) {
        visit(attended.child(), new VisitId(attended.visit()));
    }

    /** A pump that was taken out needs no refill, and one that was put in does. */
    @EventListener({PumpEntered.class, PumpEntryChecked.class, DeviceRecorded.class})
    void onRefills(Change change) {
        planning.refill(change.child());
    }

    /** The day of a task moves with its stage. */
    @EventListener({TaskGiven.class, TaskWorked.class, PathChanged.class})
    void onTasks(Change change) {
        planning.tasks(change.child());
    }

    @EventListener({EquipmentRecorded.class, CheckRecorded.class, ChildCorrected.class})
    void onDueDays(Change change) {
        planning.dueDays(change.child());
    }

    @EventListener({MedicineChanged.class, MedicineConfirmed.class, TaperSigned.class, TaperConfirmed.class})
    void onSteps(Change change) {
        planning.steps(change.child());
    }

    @EventListener
    void on(CaregiverLinked linked) {
        planning.child(linked.child());
    }

    @EventListener
    void on(CaregiverUnlinked unlinked) {
        planning.child(unlinked.child());
    }

    /** A visit may be the one that a refill or a check waits for. */
    private void visit(ChildId child, VisitId visit) {
        planning.visit(visit);
        planning.refill(child);
        planning.dueDays(child);
    }
}
