package org.hearthway.stimulator.internal;

import java.time.Clock;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.child.Device;
import org.hearthway.child.Devices;
import org.hearthway.child.SamePerson;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.stimulator.Generator;
import org.hearthway.stimulator.Generator.About;
import org.hearthway.stimulator.Reading;
import org.hearthway.stimulator.Reading.Again;
import org.hearthway.stimulator.Reading.Check;
import org.hearthway.stimulator.Reading.ReadingData;
import org.hearthway.stimulator.StimulatorRules;
import org.hearthway.stimulator.Stimulators;
import org.hearthway.stimulator.engine.BatteryUnit;
import org.hearthway.stimulator.engine.Charge;
import org.hearthway.stimulator.engine.Window;
import org.hearthway.stimulator.events.GeneratorDescribed;
import org.hearthway.stimulator.events.StimulatorRead;
import org.hearthway.stimulator.events.StimulatorReadingConfirmed;
import org.hearthway.stimulator.internal.ReadingRows.Entry;
import org.hearthway.words.Words;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The stimulators of the clinic's children, as two people read them, each for themselves. */
@Service
@EnableConfigurationProperties(StimulatorRules.class)
class RecordedStimulators implements Stimulators {

    private static final int LIFE_MOST = 30;

    private final ReadingRows rows;
    private final GeneratorRows kinds;
    private final Devices devices;
    private final SamePerson people;
    private final StimulatorRules rules;
    private final ClinicSettings clinic;
    private final Gate gate;
    private final Words words;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    RecordedStimulators(
            ReadingRows rows,
            GeneratorRows kinds,
            Devices devices,
            SamePerson people,
            StimulatorRules rules,
            ClinicSettings clinic,
            Gate gate,
            Words words,
            Clock clock,
            ApplicationEventPublisher events) {
        this.rows = rows;
        this.kinds = kinds;
        this.devices = devices;
        this.people = people;
        this.rules = rules;
        this.clinic = clinic;
        this.gate = gate;
        this.words = words;
        this.clock = clock;
        this.events = events;
    }

    @Override
    public StimulatorRules rules() {
        return rules;
    }

    @Override
    @Transactional(readOnly = true)
    public OnRecord record(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        return record(parts(viewer, child), kinds.of(child), rows.of(child));
    }

    private OnRecord record(List<Device.Part> parts, Map<String, About> about, List<Entry> entries) {
        var standing = ReadingRows.standing(entries);
        var read = new GeneratorRead(rules);
        var generators = parts.stream()
                .map(part -> read.of(part, about.getOrDefault(part.serial(), About.NOTHING), standing))
                .toList();
        var here = generators.stream()
                .flatMap(generator -> generator.readings().stream())
                .map(Reading::number)
                .collect(Collectors.toSet());
        return new OnRecord(
                generators,
                standing.stream()
                        .filter(reading -> !here.contains(reading.number()))
                        .toList(),
                ReadingRows.newest(entries));
    }

    /** The generators in the body. */
    private List<Device.Part> parts(Viewer viewer, ChildId child) {
        return everPut(viewer, child).stream().filter(Device.Part::isIn).toList();
    }

    /** The generators that are or were in the body, those that are first. */
    private List<Device.Part> everPut(Viewer viewer, ChildId child) {
        return devices.of(viewer, child).stream()
                .flatMap(device -> device.parts().stream())
                .filter(part -> part.what() == Device.What.GENERATOR)
                .sorted(Comparator.comparing(part -> !part.isIn()))
                .toList();
    }

    @Override
    @Transactional(readOnly = true)
    public List<Revision> revisions(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        var entries = rows.of(child);
        var standing =
                ReadingRows.standing(entries).stream().map(Reading::revision).collect(Collectors.toSet());
        var all = new ArrayList<Revision>();
        entries.forEach(entry -> all.add(
                0,
                new Revision(entry.reading(), standing.contains(entry.reading().revision()), entry.withdrawn())));
        return all;
    }

    @Override
    @Transactional(readOnly = true)
    public List<Outlook> outlook(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.SEE_FAMILY_PAGES, child);
        return record(parts(viewer, child), kinds.of(child), rows.of(child)).generators().stream()
                .map(this::outlook)
                .toList();
    }

    private Outlook outlook(Generator generator) {
        var checked = generator.newestChecked();
        var window = generator.counted();
        var read = checked.map(reading -> reading.data().day());
        return new Outlook(
                read,
                // that it was read is no secret, so nobody is asked to come again for what waits for its second check
                window.nextReading(
                        generator.newest().map(reading -> reading.data().day()), rules.everyDays()),
                checked.flatMap(reading -> reading.data().chargeEveryDays()),
                window.replacing().map(Window.Candidate::day),
                window.closes().map(Window.Candidate::day));
    }

    @Override
    @Transactional(readOnly = true)
    public Map<ChildId, List<Due>> due(Viewer viewer) {
        gate.require(viewer, Action.LIST_CHILDREN);
        var about = kinds.all();
        var entries = rows.all();
        var all = new HashMap<ChildId, List<Due>>();
        devices.generators()
                .forEach((child, parts) -> all.put(
                        child,
                        record(parts, about.getOrDefault(child, Map.of()), entries.getOrDefault(child, List.of()))
                                .generators()
                                .stream()
                                .map(RecordedStimulators::due)
                                .toList()));
        return all;
    }

    private static Due due(Generator generator) {
        var window = generator.window();
        return new Due(
                generator.serial(),
                generator.nextReading(),
                generator.newest().map(reading -> reading.data().day()),
                window.replacing().map(Window.Candidate::day));
    }

    @Override
    @Transactional(readOnly = true)
    public Window check(Viewer viewer, ChildId child, ReadingData data, long instead) {
        gate.require(viewer, Action.SEE_FOLDER, child);
        var parts = instead == 0 ? parts(viewer, child) : everPut(viewer, child);
        var about = kinds.of(child);
        ReadingRules.check(data, generator(parts, about, data.generator()), now());
        var standing = ReadingRows.standing(rows.of(child)).stream()
                .filter(reading -> reading.number() != instead)
                .toList();
        return parts.stream()
                .filter(part -> part.serial().equals(data.generator()))
                .findFirst()
                .map(part -> new GeneratorRead(rules)
                        .with(data, part, about.getOrDefault(part.serial(), About.NOTHING), standing))
                .orElseGet(() -> new Window(List.of(), Optional.empty(), Optional.empty()));
    }

    private static Optional<ReadingRules.Read> generator(
            List<Device.Part> parts, Map<String, About> about, String serial) {
        return parts.stream()
                .filter(part -> part.serial().equals(serial))
                .findFirst()
                .map(part -> new ReadingRules.Read(
                        part.implanted(),
                        about.getOrDefault(serial, About.NOTHING).charge()));
    }

    @Override
    @Transactional
    public Reading enter(Viewer viewer, ChildId child, ReadingData data, long seen) {
        var person = person(viewer, child);
        var entries = rows.of(child);
        var newest = ReadingRows.newest(entries);
        // in an emergency nothing that came in between holds a reading up
        if (newest != seen && !data.emergency()) {
            throw new Overtaken();
        }
        var number = entries.stream()
                        .mapToLong(entry -> entry.reading().number())
                        .max()
                        .orElse(0)
                + 1;
        return write(person, child, number, newest + 1, data, "", false);
    }

    @Override
    @Transactional
    public void correct(
            Viewer viewer, ChildId child, long number, Optional<ReadingData> data, String reason, long seen) {
        var person = person(viewer, child);
        var entries = rows.of(child);
        var was = ReadingRows.standing(entries).stream()
                .filter(reading -> reading.number() == number)
                .findFirst()
                .orElseThrow(Overtaken::new);
        if (ReadingRows.newest(entries) != seen) {
            throw new Overtaken();
        }
        var said = reason.strip();
        if (said.length() < ReadingRules.REASON_LEAST || said.length() > ReadingRules.REASON_MOST) {
            throw new Invalid(Problem.at(
                    "reason", "stimulator.problem.reason", ReadingRules.REASON_LEAST, ReadingRules.REASON_MOST));
        }
        write(person, child, number, seen + 1, data.orElse(was.data()), said, data.isEmpty());
    }

    private Reading write(
            Viewer.Person person,
            ChildId child,
            long number,
            long revision,
            ReadingData data,
            String reason,
            boolean withdrawn) {
        // a reading of a generator that was taken out since can still be corrected
        var parts = reason.isEmpty() ? parts(person, child) : everPut(person, child);
        var read = generator(parts, kinds.of(child), data.generator());
        Set<String> unusual = withdrawn ? Set.of() : ReadingRules.check(data, read, now());
        var reading = new Reading(
                number,
                revision,
                stripped(data),
                reason,
                unusual,
                person.account(),
                clock.instant().truncatedTo(ChronoUnit.MICROS),
                Optional.empty());
        rows.add(child, new Entry(reading, withdrawn));
        events.publishEvent(new StimulatorRead(child, person, reading.at()));
        return reading;
    }

    private static ReadingData stripped(ReadingData data) {
        return new ReadingData(
                data.generator().strip(),
                data.taken().truncatedTo(ChronoUnit.MINUTES),
                data.level(),
                data.unit(),
                data.estimate(),
                data.found(),
                data.impedances(),
                data.settings().stream()
                        .map(setting -> new Reading.Setting(
                                setting.side(),
                                setting.contacts().strip(),
                                setting.amplitude(),
                                setting.unit(),
                                setting.pulseWidth(),
                                setting.rate()))
                        .toList(),
                data.others(),
                data.chargeEveryDays(),
                data.lastCharge(),
                data.note().strip(),
                data.emergency());
    }

    @Override
    @Transactional
    public void confirm(Viewer viewer, ChildId child, Again again, long revision) {
        var person = person(viewer, child);
        var reading = ReadingRows.standing(rows.of(child)).stream()
                .filter(one -> one.revision() == revision && one.check().isEmpty())
                .findFirst()
                .orElseThrow(Overtaken::new);
        if (people.areOne(reading.by(), person.account())) {
            throw new Invalid(Problem.at("", "stimulator.problem.same-person"));
        }
        ReadingRules.compare(reading.data(), again);
        var check = new Check(person.account(), clock.instant().truncatedTo(ChronoUnit.MICROS));
        rows.check(child, revision, check);
        events.publishEvent(new StimulatorReadingConfirmed(
                child,
                viewer,
                check.at(),
                words.both("stimulator.told", reading.data().day())));
    }

    @Override
    @Transactional
    public void describe(Viewer viewer, ChildId child, String serial, About about) {
        var person = person(viewer, child);
        if (parts(viewer, child).stream().noneMatch(part -> part.serial().equals(serial))) {
            throw new NotAvailable();
        }
        if (kinds.of(child).getOrDefault(serial, About.NOTHING).version() != about.version()) {
            throw new Overtaken();
        }
        check(about);
        var at = clock.instant().truncatedTo(ChronoUnit.MICROS);
        var charged = about.charge() == Charge.AT_HOME;
        kinds.add(
                child,
                serial,
                new About(
                        about.charge(),
                        about.lifeYears().filter(years -> charged),
                        about.endVolts(),
                        about.version() + 1),
                person.account(),
                at);
        events.publishEvent(new GeneratorDescribed(child, viewer, at));
    }

    private static void check(About about) {
        var problems = new ArrayList<Problem>();
        Predicate<Integer> outside = years -> years < 1 || years > LIFE_MOST;
        if (about.charge() == Charge.AT_HOME
                && about.lifeYears().filter(outside).isPresent()) {
            problems.add(Problem.at("lifeYears", "stimulator.problem.life", LIFE_MOST));
        }
        if (about.endVolts().filter(volts -> !BatteryUnit.VOLT.holds(volts)).isPresent()) {
            problems.add(Problem.at(
                    "endVolts", "stimulator.problem.end-volts", BatteryUnit.VOLT.least(), BatteryUnit.VOLT.most()));
        }
        Invalid.ifAny(problems);
    }

    private Viewer.Person person(Viewer viewer, ChildId child) {
        gate.require(viewer, Action.RECORD_STIMULATOR, child);
        if (viewer instanceof Viewer.Person person) {
            return person;
        }
        throw new NotAvailable();
    }

    private LocalDateTime now() {
        return LocalDateTime.ofInstant(clock.instant(), clinic.zone());
    }
}
