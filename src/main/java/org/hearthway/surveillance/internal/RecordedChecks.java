package org.hearthway.surveillance.internal;

import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hearthway.base.Action;
import org.hearthway.base.Bilingual;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.child.Child;
import org.hearthway.child.ChildRegister;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.content.SignOff;
import org.hearthway.surveillance.Check;
import org.hearthway.surveillance.Check.CheckData;
import org.hearthway.surveillance.Surveillance;
import org.hearthway.surveillance.engine.Done;
import org.hearthway.surveillance.engine.Watched;
import org.hearthway.surveillance.events.CheckRecorded;
import org.hearthway.words.Words;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The checks that people recorded, and the dates that follow from them by the rhythms of the content. */
@Service
class RecordedChecks implements Surveillance {

    private final CheckRows rows;
    private final RhythmKind rhythms;
    private final SignOff signOff;
    private final ChildRegister children;
    private final ClinicSettings clinic;
    private final Gate gate;
    private final Words words;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    RecordedChecks(
            CheckRows rows,
            RhythmKind rhythms,
            SignOff signOff,
            ChildRegister children,
            ClinicSettings clinic,
            Gate gate,
            Words words,
            Clock clock,
            ApplicationEventPublisher events) {
        this.rows = rows;
        this.rhythms = rhythms;
        this.signOff = signOff;
        this.children = children;
        this.clinic = clinic;
        this.gate = gate;
        this.words = words;
        this.clock = clock;
        this.events = events;
    }

    @Override
    @Transactional(readOnly = true)
    public List<Outlook> outlook(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        var known = children.get(viewer, child);
        var entries = rows.of(child);
        return matters().entrySet().stream()
                .map(one -> outlook(one.getKey(), one.getValue(), known, entries))
                .toList();
    }

    @Override
    @Transactional(readOnly = true)
    public Map<ChildId, List<Outlook>> all(Viewer viewer) {
        gate.require(viewer, Action.LIST_CHILDREN);
        var matters = matters();
        var entries = rows.all();
        var all = new HashMap<ChildId, List<Outlook>>();
        children.all(viewer).forEach(child -> {
            var ahead = matters.entrySet().stream()
                    .map(one ->
                            outlook(one.getKey(), one.getValue(), child, entries.getOrDefault(child.id(), List.of())))
                    .filter(outlook -> !outlook.ahead().isEmpty())
                    .toList();
            if (!ahead.isEmpty()) {
                all.put(child.id(), ahead);
            }
        });
        return all;
    }

    /** Each file with the words that families may read now. */
    private Map<RhythmKind.Read, Matter> matters() {
        var shown = signOff.shownAmong(
                rhythms.all().stream().map(RhythmKind.Read::item).toList());
        return rhythms.all().stream()
                .collect(Collectors.toMap(
                        read -> read,
                        read -> RhythmKind.told(read, shown.contains(read.item()), signOff.ownWords(read.item())),
                        (one, same) -> one,
                        LinkedHashMap::new));
    }

    private Outlook outlook(RhythmKind.Read read, Matter matter, Child child, List<CheckRows.Entry> entries) {
        var checks = CheckRows.standing(entries, matter.watched());
        var level =
                child.gmfcs().flatMap(known -> Optional.ofNullable(read.levels().get(known)));
        var ahead = level.map(known -> known.rhythm().dates(child.data().birthDate(), done(checks), today(), AHEAD))
                .orElse(List.of());
        return new Outlook(
                matter,
                child.gmfcs(),
                level.map(RhythmKind.Level::rule),
                checks.stream().map(check -> check.data().day()).findFirst(),
                ahead,
                CheckRows.newest(entries, matter.watched()));
    }

    private static List<Done> done(List<Check> checks) {
        return checks.stream()
                .map(check -> new Done(check.data().day(), check.data().stable()))
                .toList();
    }

    @Override
    @Transactional(readOnly = true)
    public List<Check> checks(Viewer viewer, ChildId child, Watched watched) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        return CheckRows.standing(rows.of(child), watched);
    }

    @Override
    @Transactional
    public void record(Viewer viewer, ChildId child, CheckData data, long seen) {
        var person = person(viewer, child);
        var entries = rows.of(child);
        var number = entries.stream()
                        .filter(entry -> entry.watched() == data.watched())
                        .mapToLong(entry -> entry.check().number())
                        .max()
                        .orElse(0)
                + 1;
        write(person, child, entries, number, data, seen, false);
    }

    @Override
    @Transactional
    public void correct(
            Viewer viewer, ChildId child, Watched watched, long number, Optional<CheckData> data, long seen) {
        var person = person(viewer, child);
        var entries = rows.of(child);
        var was = CheckRows.standing(entries, watched).stream()
                .filter(check -> check.number() == number)
                .findFirst()
                .orElseThrow(Overtaken::new);
        write(person, child, entries, number, data.orElse(was.data()), seen, data.isEmpty());
    }

    private void write(
            Viewer.Person person,
            ChildId child,
            List<CheckRows.Entry> entries,
            long number,
            CheckData data,
            long seen,
            boolean withdrawn) {
        var watched = data.watched();
        if (CheckRows.newest(entries, watched) != seen) {
            throw new Overtaken();
        }
        var others = CheckRows.standing(entries, watched).stream()
                .filter(check -> check.number() != number)
                .map(check -> check.data().day())
                .toList();
        CheckRules.check(data, children.get(person, child).data().birthDate(), today(), others);
        var now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        rows.add(
                child,
                new CheckRows.Entry(watched, seen + 1, new Check(number, data, person.account(), now), withdrawn));
        events.publishEvent(new CheckRecorded(child, person, now, told(person, child, watched)));
    }

    private Bilingual told(Viewer viewer, ChildId child, Watched watched) {
        return outlook(viewer, child).stream()
                .filter(outlook -> outlook.matter().watched() == watched)
                .flatMap(outlook -> outlook.next().stream())
                .filter(due -> !due.by().isBefore(today()))
                .findFirst()
                .map(due -> due.from().equals(due.by())
                        ? words.both("surveillance.told.next." + watched, day(due.by()))
                        : words.both("surveillance.told.between." + watched, day(due.from()), day(due.by())))
                .orElseGet(() -> words.both("surveillance.told." + watched));
    }

    private Bilingual day(LocalDate day) {
        return new Bilingual(words.dateWithYear(Language.EN, day), words.dateWithYear(Language.ES, day));
    }

    private Viewer.Person person(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.RECORD_SURVEILLANCE, child);
        if (viewer instanceof Viewer.Person person) {
            return person;
        }
        throw new NotAvailable();
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), clinic.zone());
    }
}
