package org.hearthway.stimulator.internal;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.hearthway.base.Invalid;
import org.hearthway.base.Problem;
import org.hearthway.stimulator.Reading.Again;
import org.hearthway.stimulator.Reading.Other;
import org.hearthway.stimulator.Reading.ReadingData;
import org.hearthway.stimulator.Reading.Setting;
import org.hearthway.stimulator.Reading.Side;
import org.hearthway.stimulator.engine.AmplitudeUnit;
import org.hearthway.stimulator.engine.Charge;
import org.hearthway.stimulator.engine.ImpedanceRule.Pair;

/**
 * What may be entered of a reading. What cannot be is refused; what is only unusual is refused, too, unless it is an
 * emergency: then it is taken and marked.
 */
final class ReadingRules {

    static final int REASON_LEAST = 3;
    static final int REASON_MOST = 500;

    private static final int SERIAL = 60;
    private static final int NOTE = 500;
    private static final int PAIRS = 32;
    private static final int PAIR_NAME = 20;
    private static final int OHMS = 99_999;
    private static final int OTHERS = 12;
    private static final int OTHER_TEXT = 40;
    private static final int OTHER_UNIT = 20;
    private static final int CONTACTS = 60;
    private static final int PULSE_LEAST = 10;
    private static final int PULSE_MOST = 500;
    private static final int RATE_LEAST = 2;
    private static final int RATE_MOST = 255;
    private static final int CHARGE_MOST = 31;
    private static final int ESTIMATE_YEARS = 30;

    /** Beyond it nothing fits into its column; no device shows such a number. */
    private static final BigDecimal ABSURD = BigDecimal.valueOf(100_000);

    private static final int PLACES = 3;

    /** The generator that is read, as far as it is on record. */
    record Read(LocalDate implanted, Charge charge) {}

    private final ReadingData data;
    private final List<Problem> problems = new ArrayList<>();
    private final Set<String> unusual = new TreeSet<>();

    private ReadingRules(ReadingData data) {
        this.data = data;
    }

    /**
     * Refuses what is out of bounds, all at once.
     *
     * @param generator that is read; empty when none of such a serial number is in the body
     * @param now by the clinic's clock
     * @return the fields that are unusual and were taken because of an emergency
     */
    static Set<String> check(ReadingData data, Optional<Read> generator, LocalDateTime now) {
        var rules = new ReadingRules(data);
        rules.when(generator, now);
        rules.battery(generator);
        rules.charging(generator, now.toLocalDate());
        rules.impedances();
        rules.settings();
        rules.others();
        if (data.note().strip().length() > NOTE) {
            rules.wrong("note", "stimulator.problem.note", NOTE);
        }
        Invalid.ifAny(rules.problems);
        return rules.unusual;
    }

    private void wrong(String field, String key, Object... bounds) {
        problems.add(Problem.at(field, key, bounds));
    }

    private void unlessEmergency(String field, String key, Object... bounds) {
        if (data.emergency()) {
            unusual.add(field);
        } else {
            wrong(field, key, bounds);
        }
    }

    private void when(Optional<Read> generator, LocalDateTime now) {
        if (data.generator().strip().length() > SERIAL) {
            wrong("generator", "stimulator.problem.generator");
        } else if (generator.isEmpty()) {
            unlessEmergency("generator", "stimulator.problem.generator");
        }
        if (data.taken().isAfter(now)) {
            wrong("taken", "stimulator.problem.future");
        }
        generator
                .map(Read::implanted)
                .filter(data.day()::isBefore)
                .ifPresent(implanted -> unlessEmergency("taken", "stimulator.problem.before-implant", implanted));
    }

    private void battery(Optional<Read> generator) {
        if (data.level().isEmpty()) {
            if (!data.emergency()) {
                wrong("level", "stimulator.problem.level-missing");
            }
        } else if (!data.unit().holds(data.level().get())) {
            wrong(
                    "level",
                    "stimulator.problem.level." + data.unit(),
                    data.unit().least(),
                    data.unit().most(),
                    data.unit().places());
        }
        data.estimate()
                .filter(day -> day.isAfter(data.day().plusYears(ESTIMATE_YEARS))
                        || generator
                                .filter(read -> day.isBefore(read.implanted()))
                                .isPresent())
                .ifPresent(day -> wrong("estimate", "stimulator.problem.estimate", ESTIMATE_YEARS));
    }

    private void charging(Optional<Read> generator, LocalDate today) {
        var never = generator.filter(read -> read.charge() == Charge.NEVER).isPresent();
        if (never && data.chargeEveryDays().isPresent()) {
            wrong("chargeEveryDays", "stimulator.problem.not-charged");
        } else if (data.chargeEveryDays()
                .filter(days -> days < 1 || days > CHARGE_MOST)
                .isPresent()) {
            wrong("chargeEveryDays", "stimulator.problem.charge-every", CHARGE_MOST);
        }
        if (never && data.lastCharge().isPresent()) {
            wrong("lastCharge", "stimulator.problem.not-charged");
        } else if (data.lastCharge()
                .filter(day -> day.isAfter(data.day())
                        || day.isAfter(today)
                        || generator
                                .filter(read -> day.isBefore(read.implanted()))
                                .isPresent())
                .isPresent()) {
            wrong("lastCharge", "stimulator.problem.last-charge");
        }
    }

    private void impedances() {
        var names = new HashSet<String>();
        var fine = data.impedances().size() <= PAIRS
                && data.impedances().stream()
                        .allMatch(pair ->
                                isPossible(pair) && names.add(pair.name().toLowerCase(Locale.ROOT)));
        if (!fine) {
            wrong("impedances", "stimulator.problem.impedances", PAIRS, PAIR_NAME, OHMS);
        }
    }

    private static boolean isPossible(Pair pair) {
        return !pair.name().isBlank() && pair.name().length() <= PAIR_NAME && pair.ohms() >= 1 && pair.ohms() <= OHMS;
    }

    private void settings() {
        if (data.settings().stream().map(Setting::side).distinct().count()
                < data.settings().size()) {
            throw new IllegalArgumentException("a side twice");
        }
        data.settings().forEach(this::setting);
    }

    private void setting(Setting setting) {
        if (setting.contacts().strip().length() > CONTACTS) {
            wrong(field(setting.side(), "contacts"), "stimulator.problem.contacts", CONTACTS);
        }
        var amplitude = field(setting.side(), "amplitude");
        if (isAbsurd(setting.amplitude())) {
            wrong(
                    amplitude,
                    "stimulator.problem.amplitude." + setting.unit(),
                    AmplitudeUnit.LEAST,
                    setting.unit().most());
        } else if (!setting.unit().isUsual(setting.amplitude())) {
            unlessEmergency(
                    amplitude,
                    "stimulator.problem.amplitude." + setting.unit(),
                    AmplitudeUnit.LEAST,
                    setting.unit().most());
        }
        var pulse = field(setting.side(), "pulse");
        if (setting.pulseWidth() < 0 || setting.pulseWidth() > OHMS) {
            wrong(pulse, "stimulator.problem.pulse", PULSE_LEAST, PULSE_MOST);
        } else if (setting.pulseWidth() < PULSE_LEAST || setting.pulseWidth() > PULSE_MOST) {
            unlessEmergency(pulse, "stimulator.problem.pulse", PULSE_LEAST, PULSE_MOST);
        }
        var rate = field(setting.side(), "rate");
        if (isAbsurd(setting.rate())) {
            wrong(rate, "stimulator.problem.rate", RATE_LEAST, RATE_MOST);
        } else if (setting.rate().compareTo(BigDecimal.valueOf(RATE_LEAST)) < 0
                || setting.rate().compareTo(BigDecimal.valueOf(RATE_MOST)) > 0) {
            unlessEmergency(rate, "stimulator.problem.rate", RATE_LEAST, RATE_MOST);
        }
    }

    /** What a column cannot take, and no device shows. */
    private static boolean isAbsurd(BigDecimal number) {
        return number.signum() < 0
                || number.compareTo(ABSURD) >= 0
                || number.stripTrailingZeros().scale() > PLACES;
    }

    /** The name of a figure of a side in problems and forms, such as {@code left-amplitude}. */
    static String field(Side side, String figure) {
        return side.name().toLowerCase(Locale.ROOT) + "-" + figure;
    }

    private void others() {
        if (data.others().size() > OTHERS || !data.others().stream().allMatch(ReadingRules::isPossible)) {
            wrong("others", "stimulator.problem.others", OTHERS, OTHER_TEXT, OTHER_UNIT);
        }
    }

    private static boolean isPossible(Other other) {
        return !other.name().isBlank()
                && other.name().length() <= OTHER_TEXT
                && !other.value().isBlank()
                && other.value().length() <= OTHER_TEXT
                && other.unit().length() <= OTHER_UNIT;
    }

    /** Says which figure differs, never what the other person typed: the second person must read, not copy. */
    static void compare(ReadingData first, Again again) {
        var problems = new ArrayList<Problem>();
        if (first.level().isPresent() != again.level().isPresent()
                || differs(first.level(), again.level())
                || (first.level().isPresent() && first.unit() != again.unit())) {
            problems.add(differs("level"));
        }
        if (!first.chargeEveryDays().equals(again.chargeEveryDays())) {
            problems.add(differs("chargeEveryDays"));
        }
        for (var side : Side.values()) {
            compare(side, of(first.settings(), side), of(again.settings(), side), problems);
        }
        Invalid.ifAny(problems);
    }

    private static void compare(Side side, Optional<Setting> first, Optional<Setting> again, List<Problem> problems) {
        if (first.isEmpty() || again.isEmpty()) {
            if (first.isPresent() != again.isPresent()) {
                problems.add(differs(field(side, "amplitude")));
            }
            return;
        }
        var one = first.get();
        var other = again.get();
        if (one.amplitude().compareTo(other.amplitude()) != 0 || one.unit() != other.unit()) {
            problems.add(differs(field(side, "amplitude")));
        }
        if (one.pulseWidth() != other.pulseWidth()) {
            problems.add(differs(field(side, "pulse")));
        }
        if (one.rate().compareTo(other.rate()) != 0) {
            problems.add(differs(field(side, "rate")));
        }
    }

    private static boolean differs(Optional<BigDecimal> first, Optional<BigDecimal> again) {
        return first.flatMap(one -> again.map(one::compareTo))
                .filter(order -> order != 0)
                .isPresent();
    }

    private static Problem differs(String field) {
        return Problem.at(field, "stimulator.problem.differs");
    }

    private static Optional<Setting> of(List<Setting> settings, Side side) {
        return settings.stream().filter(setting -> setting.side() == side).findFirst();
    }
}
