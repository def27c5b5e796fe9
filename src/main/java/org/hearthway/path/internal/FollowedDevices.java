package org.hearthway.path.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Viewer;
import org.hearthway.child.Device;
import org.hearthway.child.Device.Part;
import org.hearthway.child.Device.What;
import org.hearthway.child.Devices;
import org.hearthway.path.PathDevices;
import org.hearthway.path.Plans.Change;
import org.hearthway.path.Plans.Kind;
import org.hearthway.path.engine.Template.DeviceFate;
import org.hearthway.path.engine.Template.DeviceNote;
import org.hearthway.path.engine.Template.Outcome;
import org.hearthway.path.engine.Template.Stage;
import org.hearthway.path.internal.DecisionRecords.Row;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads it off the decisions: a way that went back leaves no trace of the outcome in the plan. */
@Service
class FollowedDevices implements PathDevices {

    private final DecisionRecords records;
    private final ChildCourses courses;
    private final Devices devices;
    private final Gate gate;

    FollowedDevices(DecisionRecords records, ChildCourses courses, Devices devices, Gate gate) {
        this.records = records;
        this.courses = courses;
        this.devices = devices;
        this.gate = gate;
    }

    /** What an outcome said of a device, by the decision that gave it. */
    private record Said(Row row, Stage stage, Outcome outcome, DeviceNote note) {

        LocalDate day() {
            return row.day().orElseThrow();
        }
    }

    @Override
    @Transactional(readOnly = true)
    public List<Behind> behind(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        var rows = records.of(child);
        var undone = Standing.undone(rows);
        var counting =
                rows.stream().filter(row -> !undone.contains(row.version())).toList();
        var said = counting.stream().flatMap(row -> said(row).stream()).toList();
        if (said.isEmpty()) {
            return List.of();
        }
        var recorded = devices.of(viewer, child);
        var behind = new ArrayList<Behind>();
        for (var one : said) {
            if (!isCorrected(one, counting)) {
                happened(one, counting)
                        .filter(day ->
                                isBehind(one.note().fate(), recorded, one.day(), begun(before(one, counting), one)))
                        .ifPresent(day -> behind.add(new Behind(
                                one.row().version(),
                                courses.template(pathway(one.row())).name(),
                                one.stage().name(),
                                one.outcome().name(),
                                one.note().fate(),
                                day)));
            }
        }
        return List.copyOf(behind);
    }

    private Optional<Said> said(Row row) {
        return row.kind() != Kind.ENDED
                ? Optional.empty()
                : row.stage()
                        .flatMap(courses.template(pathway(row))::stage)
                        .flatMap(stage -> row.outcome()
                                .flatMap(stage::outcome)
                                .flatMap(outcome -> outcome.device().map(note -> new Said(row, stage, outcome, note))));
    }

    private static String pathway(Row row) {
        return row.pathway().orElseThrow();
    }

    /** Said anew of the same stage; where the way went back the stage is another one when it ends again. */
    private static boolean isCorrected(Said said, List<Row> counting) {
        return said.outcome().returnsTo().isEmpty()
                && counting.stream()
                        .anyMatch(later -> later.version() > said.row().version()
                                && later.kind() == Kind.ENDED
                                && later.pathway().equals(said.row().pathway())
                                && later.stage().equals(said.row().stage()));
    }

    /** The day on which it happened; empty while the operation is still to come. */
    private Optional<LocalDate> happened(Said said, List<Row> counting) {
        if (said.note().at().isEmpty()) {
            return Optional.of(said.day());
        }
        return counting.stream()
                .filter(later -> later.version() > said.row().version()
                        && later.pathway().equals(said.row().pathway())
                        && later.stage().equals(said.note().at())
                        && isDated(later.kind()))
                .reduce((first, last) -> last)
                .filter(last -> last.kind() == Kind.FIXED)
                .flatMap(Row::day)
                .filter(day -> !day.isBefore(said.day()) && !day.isAfter(courses.today()));
    }

    private static boolean isDated(Kind kind) {
        return kind == Kind.FIXED || kind == Kind.SET_BY_HAND || kind == Kind.BACK_TO_RULE;
    }

    private static List<Row> before(Said said, List<Row> counting) {
        return counting.stream()
                .filter(row -> row.version() < said.row().version())
                .toList();
    }

    private LocalDate begun(List<Row> before, Said said) {
        return begun(before, pathway(said.row()), said.stage(), said.day());
    }

    /** When a stage began that ends on a day, by what was decided before. */
    private LocalDate begun(List<Row> before, String pathway, Stage stage, LocalDate end) {
        return courses.standing(before)
                .on(pathway)
                .flatMap(path -> courses.plan(pathway, path.course()).stage(stage.id()))
                .map(planned -> planned.start())
                .orElse(end);
    }

    /**
     * Whether the record of devices still says otherwise.
     *
     * @param day on which the stage ended: what came in later is not meant
     * @param since the stage's first day: a part of it that came out earlier is not meant
     */
    private static boolean isBehind(DeviceFate fate, List<Device> recorded, LocalDate day, LocalDate since) {
        return switch (fate) {
            case PUMP_OUT ->
                parts(recorded, Device.Kind.PUMP).anyMatch(part -> part.what() == What.RESERVOIR && isHeld(part, day));
            case GENERATOR_OUT ->
                parts(recorded, Device.Kind.STIMULATOR)
                        .anyMatch(part -> part.what() == What.GENERATOR && isHeld(part, day));
            case STIMULATOR_OUT -> parts(recorded, Device.Kind.STIMULATOR).anyMatch(part -> isHeld(part, day));
            case STIMULATOR_PART_OUT ->
                parts(recorded, Device.Kind.STIMULATOR).anyMatch(part -> isHeld(part, day))
                        && parts(recorded, Device.Kind.STIMULATOR)
                                .flatMap(part -> part.removed().stream())
                                .noneMatch(out -> !out.isBefore(since));
            case PUMP_RENEWED -> isOld(recorded, Device.Kind.PUMP, day);
            case STIMULATOR_RENEWED -> isOld(recorded, Device.Kind.STIMULATOR, day);
        };
    }

    private static boolean isOld(List<Device> recorded, Device.Kind kind, LocalDate day) {
        return parts(recorded, kind).anyMatch(Part::isIn)
                && parts(recorded, kind).allMatch(part -> part.implanted().isBefore(day));
    }

    private static boolean isHeld(Part part, LocalDate day) {
        return part.isIn() && !part.implanted().isAfter(day);
    }

    private static Stream<Part> parts(List<Device> recorded, Device.Kind kind) {
        return recorded.stream().filter(device -> device.kind() == kind).flatMap(device -> device.parts().stream());
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<DeviceFate> ifSaid(Viewer viewer, ChildId child, String pathway, Change change) {
        gate.require(viewer, Action.CHANGE_PATH, child);
        if (!(change instanceof Change.End end)) {
            return Optional.empty();
        }
        var rows = records.of(child);
        var recorded = devices.of(viewer, child);
        return courses.template(pathway)
                .stage(end.stage())
                .flatMap(stage -> stage.outcome(end.outcome())
                        .flatMap(Outcome::device)
                        .map(DeviceNote::fate)
                        .filter(fate -> isBehind(fate, recorded, end.day(), begun(rows, pathway, stage, end.day()))));
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<Device.Kind> held(Viewer viewer, ChildId child, String pathway) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        var about = courses.template(pathway).stages().stream()
                .flatMap(stage -> stage.outcomes().stream())
                .flatMap(outcome -> outcome.device().stream())
                .map(note -> kind(note.fate()))
                .findFirst();
        return about.filter(kind ->
                devices.of(viewer, child).stream().anyMatch(device -> device.kind() == kind && device.isInPlace()));
    }

    private static Device.Kind kind(DeviceFate fate) {
        return switch (fate) {
            case PUMP_OUT, PUMP_RENEWED -> Device.Kind.PUMP;
            case GENERATOR_OUT, STIMULATOR_OUT, STIMULATOR_PART_OUT, STIMULATOR_RENEWED -> Device.Kind.STIMULATOR;
        };
    }
}
