package org.hearthway.medicine.internal;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.hearthway.base.ChildId;
import org.hearthway.medicine.MedicineId;
import org.hearthway.medicine.Medicines.Line;
import org.hearthway.medicine.Medicines.Medicine;
import org.hearthway.medicine.Medicines.Shown;
import org.hearthway.medicine.engine.TaperCalendar;
import org.springframework.stereotype.Component;

/** What counts of a child's medicines and calendars: the newest of all, and the newest that two people checked. */
@Component
class MedicineList {

    private static final Comparator<Medicine> TAKEN_FIRST = Comparator.<Medicine, Boolean>comparing(
                    medicine -> medicine.data().stop().isPresent())
            .thenComparing(medicine -> medicine.data().name().toLowerCase(Locale.ROOT))
            .thenComparing(medicine -> medicine.id().value());

    private final MedicineRows medicines;
    private final TaperRows tapers;

    MedicineList(MedicineRows medicines, TaperRows tapers) {
        this.medicines = medicines;
        this.tapers = tapers;
    }

    /** All versions of each medicine, newest first. */
    Map<MedicineId, List<Medicine>> versions(ChildId child) {
        var all = new LinkedHashMap<MedicineId, List<Medicine>>();
        medicines.of(child).forEach(version -> all.merge(version.id(), List.of(version), MedicineList::joined));
        return all;
    }

    /** All calendars of each medicine, newest first. */
    Map<MedicineId, List<TaperRows.Kept>> calendars(ChildId child) {
        var all = new LinkedHashMap<MedicineId, List<TaperRows.Kept>>();
        tapers.of(child).forEach(taper -> all.merge(taper.medicine(), List.of(taper), MedicineList::joined));
        return all;
    }

    private static <T> List<T> joined(List<T> first, List<T> second) {
        return java.util.stream.Stream.concat(first.stream(), second.stream()).toList();
    }

    /** The newest version of each, those taken first. */
    List<Medicine> newest(ChildId child) {
        return versions(child).values().stream()
                .map(versions -> versions.get(0))
                .sorted(TAKEN_FIRST)
                .toList();
    }

    /** What the family may see. */
    Shown shown(ChildId child) {
        var all = versions(child);
        var calendars = calendars(child);
        var lines = all.entrySet().stream()
                .flatMap(entry -> line(entry.getValue(), calendars.getOrDefault(entry.getKey(), List.of())).stream())
                .sorted(Comparator.comparing(Line::medicine, TAKEN_FIRST))
                .toList();
        var writing = all.entrySet().stream()
                .anyMatch(entry -> isChanging(entry.getValue(), calendars.getOrDefault(entry.getKey(), List.of())));
        return new Shown(lines, writing);
    }

    private static Optional<Line> line(List<Medicine> versions, List<TaperRows.Kept> calendars) {
        return versions.stream()
                .filter(version -> version.check().isPresent())
                .findFirst()
                .map(checked ->
                        new Line(checked, calendar(checked, versions, calendars), isChanging(versions, calendars)));
    }

    private static Optional<TaperCalendar> calendar(
            Medicine line, List<Medicine> versions, List<TaperRows.Kept> calendars) {
        return calendars.stream()
                .filter(taper -> taper.check().isPresent())
                .findFirst()
                .filter(holdsFor(line, versions))
                .map(TaperRows.Kept::calendar);
    }

    /** Whether a calendar was signed for a medicine taken as this version says. */
    static Predicate<TaperRows.Kept> holdsFor(Medicine line, List<Medicine> versions) {
        return taper -> versions.stream()
                .filter(version -> version.version() == taper.medicineVersion())
                .anyMatch(signedFor -> MedicineRules.takenAlike(signedFor.data(), line.data()));
    }

    /** Something newer waits for its second check. A calendar that no longer fits the medicine waits for nothing. */
    private static boolean isChanging(List<Medicine> versions, List<TaperRows.Kept> calendars) {
        var newest = versions.get(0);
        return newest.check().isEmpty()
                || calendars.stream()
                        .findFirst()
                        .filter(taper -> taper.check().isEmpty())
                        .filter(holdsFor(newest, versions))
                        .isPresent();
    }

    /** The days on which a calendar that nobody questions changes a dose. */
    SortedSet<java.time.LocalDate> changeDays(ChildId child) {
        var days = new TreeSet<java.time.LocalDate>();
        shown(child).lines().stream()
                .filter(line -> !line.changing())
                .flatMap(line -> line.calendar().stream())
                .forEach(calendar -> days.addAll(calendar.changeDays()));
        return days;
    }
}
