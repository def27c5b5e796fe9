package org.hearthway.demo;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.Period;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.hearthway.base.ChildId;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.Device;
import org.hearthway.paper.EmergencySheet.PlanData;
import org.hearthway.pump.PumpBook.Again;
import org.hearthway.pump.PumpBook.NewEntry;
import org.hearthway.pump.PumpEntry;
import org.hearthway.pump.PumpEntry.Setting;
import org.hearthway.pump.RefillDetails;
import org.hearthway.pump.engine.Catheter;
import org.hearthway.pump.engine.Concentration;
import org.hearthway.pump.engine.DailyDose;
import org.hearthway.pump.engine.Dosing;
import org.hearthway.pump.engine.FlowRange;
import org.hearthway.pump.engine.FlowRate;
import org.hearthway.pump.engine.Length;
import org.hearthway.pump.engine.PumpModel;
import org.hearthway.pump.engine.RefillForecast;
import org.hearthway.pump.engine.Volume;
import org.hearthway.pump.engine.VolumePerLength;
import org.hearthway.task.Assignee;
import org.hearthway.task.Task;

/** The pump of a story: entered from its cards, filled, its dose changed, each typed again; its emergency plan signed. */
record Implant(
        ChildhoodFactory services,
        DemoDays days,
        Function<String, Viewer.Person> person,
        Supplier<ChildId> child,
        Story.Implanted story,
        List<Story.Filled> fills) {

    private static final LocalTime IN = LocalTime.of(9, 40);
    private static final LocalTime FILL = LocalTime.of(11, 5);
    private static final LocalTime STEP = LocalTime.of(14, 20);
    private static final LocalTime CALL = LocalTime.of(15, 10);
    private static final int DAYS_TO_CALL = 2;
    private static final int MINUTES_TO_CHECK = 12;
    private static final int YEARS_OF_LIFE = 7;
    private static final int ALARM = 2;

    void addTo(Acts acts) {
        acts.at(days.atWork(story.day(), IN), this::enter);
        acts.at(days.atWork(story.day(), IN.plusMinutes(MINUTES_TO_CHECK)), () -> checkLast(story.checked()));
        for (var fill : fills) {
            acts.at(days.atWork(fill.day(), FILL), () -> fill(fill));
            acts.at(days.atWork(fill.day() + DAYS_TO_CALL, CALL), () -> called(fill.by(), days.open(fill.day())));
            fill.checked()
                    .ifPresent(second -> acts.at(
                            days.atWork(fill.day(), FILL.plusMinutes(MINUTES_TO_CHECK)), () -> checkLast(second)));
        }
        for (var step : story.steps()) {
            acts.at(days.atWork(step.day(), STEP), () -> step(step));
            acts.at(days.atWork(step.day() + DAYS_TO_CALL, CALL), () -> called(step.by(), days.open(step.day())));
            step.checked()
                    .ifPresent(second -> acts.at(
                            days.atWork(step.day(), STEP.plusMinutes(MINUTES_TO_CHECK)), () -> checkLast(second)));
        }
        var looked = fills.stream().mapToInt(Story.Filled::day).max().orElse(story.day());
        story.plan().ifPresent(plan -> acts.at(days.atWork(looked, STEP.plusMinutes(40)), () -> sign(plan)));
    }

    private void enter() {
        var nurse = person.apply(story.by());
        var in = days.open(story.day());
        services.devices()
                .enter(
                        nurse,
                        child.get(),
                        Device.Kind.PUMP,
                        List.of(
                                new Device.Part(Device.What.RESERVOIR, story.pump(), in, Optional.empty()),
                                new Device.Part(Device.What.CATHETER, story.catheter(), in, Optional.empty())));
        var flows = new FlowRange(FlowRate.millilitresPerDay("0.048"), FlowRate.millilitresPerDay("24"));
        var model = PumpModel.programmable(
                Volume.millilitres(BigDecimal.valueOf(story.reservoir())),
                Volume.millilitres(BigDecimal.valueOf(ALARM)),
                Volume.millilitres("0.25"),
                flows,
                Period.ofYears(YEARS_OF_LIFE));
        var catheter = new Catheter(
                story.catheterLength().map(Length::centimetres),
                Optional.of(VolumePerLength.millilitresPerCentimetre("0.0025")));
        write(nurse, in.atTime(IN), new PumpEntry.Implant("reservoir-" + story.reservoir(), model, catheter), "");
    }

    private void fill(Story.Filled fill) {
        var nurse = person.apply(fill.by());
        var at = days.open(fill.day()).atTime(FILL);
        var left = services.pumps()
                .outlook(nurse, child.get())
                .reservoir()
                .map(known ->
                        known.at(at.atZone(days.zone()).toInstant()).rounded(1).add(fill.found()));
        var strength = new Concentration(fill.strength());
        var set = new Setting(strength, Dosing.constant(dose(fill)));
        var details = new RefillDetails(
                "Baclofen for the spinal canal",
                "",
                Optional.empty(),
                "Clear",
                1,
                Optional.empty(),
                true,
                nurse.name(),
                "");
        var known = new PumpEntry.Refill(
                false,
                details,
                left.map(Volume::millilitres),
                Optional.empty(),
                Optional.of(Volume.millilitres(fill.injected())),
                Optional.of(Volume.millilitres(fill.injected())),
                Optional.empty(),
                Optional.of(set),
                Optional.empty(),
                fill.marginDays());
        var printed = printed(nurse, at, known);
        write(
                nurse,
                at,
                new PumpEntry.Refill(
                        false,
                        details,
                        known.withdrawn(),
                        known.left(),
                        known.injected(),
                        known.measured(),
                        known.beyondUse(),
                        known.setting(),
                        printed,
                        fill.marginDays()),
                "Looked at with the surgeon; nothing else found.");
    }

    /** So that the alarm comes on the day of the story: half a day after it began to be that day. */
    private DailyDose dose(Story.Filled fill) {
        var whole = ChronoUnit.DAYS.between(days.open(fill.day()), days.on(fill.alarm()));
        var used = fill.injected().subtract(BigDecimal.valueOf(ALARM)).multiply(fill.strength());
        var half = BigDecimal.valueOf(whole).add(new BigDecimal("0.4"));
        return new DailyDose(used.divide(half, 1, RoundingMode.HALF_UP));
    }

    private void step(Story.Changed step) {
        var nurse = person.apply(step.by());
        var at = days.open(step.day()).atTime(STEP);
        var before = services.pumps().outlook(nurse, child.get()).setting().orElseThrow();
        var factor = BigDecimal.valueOf(100L + step.percent()).movePointLeft(2);
        var dose = before.perDay().rounded(3).multiply(factor).setScale(1, RoundingMode.HALF_UP);
        var set = new Setting(before.strength(), Dosing.constant(new DailyDose(dose)));
        var printed = printed(nurse, at, new PumpEntry.Change(set, step.reason(), Optional.empty()));
        write(nurse, at, new PumpEntry.Change(set, step.reason(), printed), "Agreed in the team.");
    }

    /** The pump reckons as we do. */
    private Optional<LocalDate> printed(Viewer nurse, LocalDateTime at, PumpEntry.What what) {
        return services.pumps()
                .reckon(nurse, child.get(), new NewEntry(at, what, Optional.empty(), false, ""))
                .forecast()
                .flatMap(RefillForecast::planningDay);
    }

    private void write(Viewer.Person nurse, LocalDateTime at, PumpEntry.What what, String unusual) {
        var plain = new NewEntry(at, what, Optional.empty(), false, "");
        var asked = services.pumps().reckon(nurse, child.get(), plain).wantsWords();
        services.pumps()
                .enter(
                        nurse,
                        child.get(),
                        asked ? new NewEntry(at, what, Optional.empty(), false, unusual) : plain,
                        last(nurse));
    }

    private long last(Viewer viewer) {
        return services.pumps().history(viewer, child.get()).size();
    }

    /** The second person reads the same print-out. */
    private void checkLast(String second) {
        var checker = person.apply(second);
        var entry = services.pumps()
                .history(person.apply(story.by()), child.get())
                .get(0)
                .entry()
                .orElseThrow();
        services.pumps()
                .check(
                        checker,
                        child.get(),
                        entry.number(),
                        new Again(
                                entry.what().keyFigures(),
                                entry.what().setting().map(Setting::dosing)));
    }

    /** The family was called after the change of that day. */
    private void called(String by, LocalDate changed) {
        var nurse = person.apply(by);
        services.tasks().of(nurse, child.get()).stream()
                .filter(task -> task.end().isEmpty() && task.to().equals(new Assignee.AnyOf(Role.NURSE)))
                .filter(task -> task.givenAt().atZone(days.zone()).toLocalDate().equals(changed))
                .forEach(task -> services.tasks().end(nurse, task.id(), Task.Outcome.DONE, "", task.version()));
    }

    private void sign(Story.Plan plan) {
        services.sheets()
                .sign(
                        person.apply(plan.by()),
                        child.get(),
                        new PlanData(plan.line(), plan.lies(), plan.words(), ""),
                        0);
    }
}
