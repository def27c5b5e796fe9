package org.hearthway.clinic.internal;

import java.net.URI;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.hearthway.clinic.ClinicSettings;

/**
 * Makes the settings out of plain texts, whether they come from properties or from the demo's file. Notes everything
 * that is missing or wrong through {@code wrong} and goes on with a stand-in, so that all of it is told at once.
 */
final class SettingsReader {

    /** Digits with the usual marks between them; short numbers such as 112 count. */
    private static final Pattern PHONE = Pattern.compile("\\+?[0-9][0-9 ().-]{1,24}");

    private static final Pattern MAIL = Pattern.compile("[^\\s@<>,;:\"]+@[^\\s@<>,;:\"]+\\.[^\\s@<>,;:\"]+");
    private static final Set<String> THIS_MACHINE = Set.of("localhost", "127.0.0.1", "[::1]");

    /** Where the texts come from and mistakes go to. */
    interface Source {
        /** The text of a setting, empty when it is not set. */
        Optional<String> text(String name);

        /** Notes what is wrong with a setting and what was expected. */
        void wrong(String name, String wrong, String expected);
    }

    private final Source source;

    SettingsReader(Source source) {
        this.source = source;
    }

    ClinicSettings read(boolean demo) {
        var opens = time("office-opens");
        var closes = time("office-closes");
        if (opens.isPresent() && closes.isPresent() && !opens.get().isBefore(closes.get())) {
            source.wrong("office-closes", "it is not after office-opens", "a later time");
        }
        return new ClinicSettings(
                words("name", 80),
                words("sender-name", 60),
                parsed("sender-address", "a mail address such as office@clinic.example", t -> matching(MAIL, t))
                        .orElse(""),
                parsed("zone", "a time zone such as America/New_York", SettingsReader::zone)
                        .orElse(ZoneId.of("UTC")),
                phone("emergency-number"),
                phone("urgent-line"),
                phone("office-line"),
                parsed("office-days", "weekdays such as monday,tuesday,friday", SettingsReader::days)
                        .orElse(Set.of()),
                opens.orElse(LocalTime.MIN),
                closes.orElse(LocalTime.MAX),
                parsed(
                                "base-url",
                                "an address such as https://care.clinic.example, with https unless it is this machine",
                                SettingsReader::address)
                        .orElse(""),
                demo);
    }

    private String words(String name, int longest) {
        return parsed(
                        name,
                        "a name of 1 to " + longest + " characters on one line",
                        t -> Optional.of(t)
                                .filter(v -> v.length() <= longest)
                                .filter(v -> v.chars().noneMatch(Character::isISOControl)))
                .orElse("");
    }

    private String phone(String name) {
        return parsed(name, "a phone number such as 555-0121", t -> matching(PHONE, t))
                .orElse("");
    }

    private Optional<LocalTime> time(String name) {
        return parsed(name, "a time such as 08:00", t -> Optional.of(LocalTime.parse(t)));
    }

    private <T> Optional<T> parsed(String name, String expected, Function<String, Optional<T>> parse) {
        var text = source.text(name).map(String::strip).filter(t -> !t.isEmpty());
        if (text.isEmpty()) {
            source.wrong(name, "it is missing", expected);
            return Optional.empty();
        }
        Optional<T> parsed;
        try {
            parsed = parse.apply(text.get());
        } catch (DateTimeException | IllegalArgumentException notReadable) {
            parsed = Optional.empty();
        }
        if (parsed.isEmpty()) {
            source.wrong(name, "it is \"" + text.get() + "\"", expected);
        }
        return parsed;
    }

    private static Optional<String> matching(Pattern pattern, String text) {
        return Optional.of(text).filter(t -> pattern.matcher(t).matches() && t.length() <= 254);
    }

    /** Only regions: a bare offset does not know when the clocks change. */
    private static Optional<ZoneId> zone(String text) {
        return Optional.of(text).filter(ZoneId.getAvailableZoneIds()::contains).map(ZoneId::of);
    }

    private static Optional<Set<DayOfWeek>> days(String text) {
        List<DayOfWeek> days = new ArrayList<>();
        for (var day : text.split(",")) {
            days.add(DayOfWeek.valueOf(day.strip().toUpperCase(Locale.ROOT)));
        }
        return Optional.of(EnumSet.copyOf(days));
    }

    private static Optional<String> address(String text) {
        var bare = text.endsWith("/") ? text.substring(0, text.length() - 1) : text;
        var uri = URI.create(bare);
        var host = uri.getHost();
        var safe = "https".equals(uri.getScheme())
                || ("http".equals(uri.getScheme()) && host != null && THIS_MACHINE.contains(host));
        return host != null && safe && uri.getQuery() == null && uri.getFragment() == null
                ? Optional.of(bare)
                : Optional.empty();
    }
}
