package org.hearthway.program.internal;

import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.hearthway.base.ChildId;
import org.hearthway.child.events.ChildrenMerged;
import org.hearthway.child.events.MergeTakenBack;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.program.FamilyTimes;
import org.hearthway.program.Programs;
import org.hearthway.program.engine.ProgramLine;
import org.hearthway.program.engine.WeekSchedule;
import org.hearthway.program.engine.WeekSchedule.Dated;
import org.hearthway.program.engine.week.Laying;
import org.hearthway.program.engine.week.Layout;
import org.hearthway.program.engine.week.Standing;
import org.hearthway.program.events.ProgramSaved;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * Lays a child's weeks out anew when something they rest on is different: the program, the family's times, the days away.
 * What was laid out is kept, so that reading a week asks for no planning, and a day gone by stays as it was.
 */
@Component
class WeekLaying {

    private final ProgramStore programs;
    private final WeekStore weeks;
    private final WeekAsking asking;
    private final ClinicSettings clinic;
    private final Clock clock;

    WeekLaying(ProgramStore programs, WeekStore weeks, WeekAsking asking, ClinicSettings clinic, Clock clock) {
        this.programs = programs;
        this.weeks = weeks;
        this.asking = asking;
        this.clinic = clinic;
        this.clock = clock;
    }

    @EventListener
    void on(ProgramSaved saved) {
        programs.latest(saved.child()).map(Programs.Version::effective).ifPresent(day -> anew(saved.child(), day));
    }

    @EventListener
    void on(ChildrenMerged merged) {
        anew(merged.child(), LocalDate.ofInstant(clock.instant(), clinic.zone()), true);
    }

    /** What rested on two entries together says nothing of either alone. */
    @EventListener
    void on(MergeTakenBack apart) {
        weeks.dropOfMerge(apart.child());
        // a chain that went back took it along
        weeks.dropOfMerge(apart.folded());
    }

    /** Lays the days out from this one on. */
    void anew(ChildId child, LocalDate first) {
        anew(child, first, false);
    }

    private void anew(ChildId child, LocalDate first, boolean ofMerge) {
        weeks.hold(child);
        var versions = versions(programs.all(child));
        if (versions.isEmpty()) {
            return;
        }
        var times = weeks.times(child);
        var away = weeks.away(child, first.minusDays(7));
        var laid = weeks.laid(child, first.minusDays(7), Optional.empty());
        var before = new LaidDays(
                versions.stream().filter(v -> v.effective().isBefore(first)).toList(), laid);
        var known = new HashMap<List<Object>, Standing>();
        var stretches = Laying.from(
                first,
                horizon(first, versions, times, away),
                day -> standing(known, versions, times, day),
                day -> away.stream().anyMatch(one -> holds(one, day)),
                before::placed);
        if (!laid.isEmpty() || stretches.stream().anyMatch(one -> one.layout().kind() != Layout.Kind.AS_WRITTEN)) {
            weeks.keep(child, clock.instant(), stretches, ofMerge);
        }
    }

    static List<Dated> versions(List<Programs.Version> versions) {
        return versions.stream()
                .map(v -> new Dated(v.number(), v.effective(), v.lines()))
                .toList();
    }

    private static boolean holds(FamilyTimes.Away away, LocalDate day) {
        return !day.isBefore(away.first()) && !day.isAfter(away.last());
    }

    private Standing standing(
            Map<List<Object>, Standing> known, List<Dated> versions, List<FamilyTimes.Version> times, LocalDate day) {
        var version = WeekSchedule.versionOn(versions, day);
        var named = times.stream().filter(one -> !one.effective().isAfter(day)).findFirst();
        return known.computeIfAbsent(
                List.of(
                        version.map(Dated::number).orElse(0),
                        named.map(FamilyTimes.Version::number).orElse(0)),
                asked -> asking.standing(
                        version.map(Dated::lines).orElse(List.of()),
                        named.map(FamilyTimes.Version::times).orElse(FamilyTimes.Times.NONE)));
    }

    private static LocalDate horizon(
            LocalDate first, List<Dated> versions, List<FamilyTimes.Version> times, List<FamilyTimes.Away> away) {
        return Stream.of(
                        versions.stream().map(Dated::effective),
                        versions.stream().flatMap(v -> v.lines().stream()).map(ProgramLine::from),
                        versions.stream()
                                .flatMap(v -> v.lines().stream())
                                .flatMap(line -> line.until().stream())
                                .map(day -> day.plusDays(1)),
                        times.stream().map(FamilyTimes.Version::effective),
                        away.stream().map(one -> one.last().plusDays(1)))
                .flatMap(days -> days)
                .max(LocalDate::compareTo)
                .filter(day -> day.isAfter(first))
                .orElse(first);
    }
}
