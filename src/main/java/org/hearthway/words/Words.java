package org.hearthway.words;

import com.ibm.icu.text.DateTimePatternGenerator;
import com.ibm.icu.text.ListFormatter;
import com.ibm.icu.text.MessageFormat;
import com.ibm.icu.util.ULocale;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.time.temporal.TemporalAccessor;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Language;
import org.hearthway.base.Problem;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.stereotype.Component;

/**
 * The words of the screens. Each feature keeps its own bundle, {@code messages/<feature>_en.properties} and
 * {@code _es}; keys begin with the feature's name. Patterns are ICU messages: {@code {0}}, plurals, spelled-out numbers.
 * A key that is missing in a language is an error, never silence: a test compares the bundles.
 */
@Component
public class Words {

    private final Map<Language, Map<String, String>> bundles = new HashMap<>();
    private final Map<String, DateTimeFormatter> formatters = new ConcurrentHashMap<>();

    private final boolean bracketed;

    /** Reads every bundle on the class path. */
    public Words() {
        this(false);
    }

    /**
     * Reads every bundle on the class path.
     *
     * @param bracketed whether all that is said stands in brackets, for the walk that looks for text from elsewhere
     */
    @Autowired
    Words(@Value("${hearthway.words.bracketed:false}") boolean bracketed) {
        this.bracketed = bracketed;
        for (var language : Language.values()) {
            bundles.put(language, read(language));
        }
    }

    private static Map<String, String> read(Language language) {
        try {
            var all = new HashMap<String, String>();
            var pattern = "classpath*:/messages/*_" + language.tag() + ".properties";
            for (Resource file : new PathMatchingResourcePatternResolver().getResources(pattern)) {
                var properties = new Properties();
                try (var reader = new java.io.InputStreamReader(file.getInputStream(), StandardCharsets.UTF_8)) {
                    properties.load(reader);
                }
                for (var key : properties.stringPropertyNames()) {
                    if (all.put(key, properties.getProperty(key)) != null) {
                        throw new IllegalStateException("message key " + key + " stands in two bundles");
                    }
                }
            }
            return Map.copyOf(all);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Map<String, String> bundle(Language language) {
        return Objects.requireNonNull(bundles.get(language));
    }

    /** All keys of a language. */
    public Set<String> keys(Language language) {
        return bundle(language).keySet();
    }

    /**
     * A message in a language.
     *
     * @throws IllegalArgumentException when there is no such key
     */
    public String say(Language language, String key, Object... args) {
        var pattern = bundle(language).get(key);
        if (pattern == null) {
            throw new IllegalArgumentException("no words for key " + key + " in " + language);
        }
        var format = new MessageFormat(pattern, language.locale());
        var spoken = new Object[args.length];
        for (int i = 0; i < args.length; i++) {
            spoken[i] = spoken(language, args[i]);
        }
        var said = format.format(spoken);
        for (int i = 0; i < args.length; i++) {
            // the point of an abbreviated day or hour ends the sentence too: "a las 4:30 p. m."
            if (args[i] instanceof TemporalAccessor && spoken[i] instanceof String words && words.endsWith(".")) {
                said = said.replace(words + ".", words);
            }
        }
        return marked(said);
    }

    private Object spoken(Language language, Object arg) {
        if (arg instanceof LocalDate date) {
            return date(language, date);
        }
        if (arg instanceof LocalTime time) {
            return time(language, time);
        }
        if (arg instanceof Bilingual both) {
            return both.in(language);
        }
        return arg;
    }

    /** The same message in both languages. */
    public Bilingual both(String key, Object... args) {
        return new Bilingual(say(Language.EN, key, args), say(Language.ES, key, args));
    }

    /** What is wrong, in words; a bound may be years away, so each of its days has its year. */
    public String say(Language language, Problem problem) {
        return say(
                language,
                problem.key(),
                problem.args().stream()
                        .map(arg -> arg instanceof LocalDate day ? format(language, "yMMMEd", day) : arg)
                        .toArray());
    }

    /** These words in one language, for a page template. */
    public Say in(Language language) {
        return new Say(this, language);
    }

    /** A date near today: "Tue, Mar 17". */
    public String date(Language language, LocalDate date) {
        return format(language, "EEEMMMd", date);
    }

    /** A date with its weekday in full: "Tuesday, March 17". */
    public String longDate(Language language, LocalDate date) {
        return format(language, "EEEEMMMMd", date);
    }

    /** A date with its weekday and year in full: "Thursday, January 14, 2027". */
    public String fullDate(Language language, LocalDate date) {
        return format(language, "yMMMMEEEEd", date);
    }

    /** The month: "July". */
    public String month(Language language, LocalDate date) {
        return format(language, "MMMM", date);
    }

    /** Month and year: "January 2027". */
    public String monthYear(Language language, LocalDate date) {
        return format(language, "yMMMM", date);
    }

    /** A date that may be far: "Mar 17, 2027". */
    public String dateWithYear(Language language, LocalDate date) {
        return format(language, "yMMMd", date);
    }

    /** Month, day and year in full: "March 17, 2027". */
    public String monthDayYear(Language language, LocalDate date) {
        return format(language, "yMMMMd", date);
    }

    /** Month and day cut short: "Mar 17". */
    public String shortMonthDay(Language language, LocalDate date) {
        return format(language, "MMMd", date);
    }

    /** Month and day alone: "March 17". */
    public String monthDay(Language language, LocalDate date) {
        return format(language, "MMMMd", date);
    }

    /** The weekday: "Tuesday". */
    public String weekday(Language language, LocalDate date) {
        return format(language, "EEEE", date);
    }

    /** The weekday cut short: "Tue". */
    public String shortWeekday(Language language, LocalDate date) {
        return format(language, "EEE", date);
    }

    /** The month cut short: "Mar". */
    public String shortMonth(Language language, LocalDate date) {
        return format(language, "MMM", date);
    }

    /** Parts one after another as people say them: "a, b, and c". */
    public String list(Language language, List<String> parts) {
        return marked(ListFormatter.getInstance(language.locale()).format(parts));
    }

    /** A time zone by its short name: "Arizona Time" or "MST". */
    public String zone(Language language, ZoneId zone) {
        return marked(zone.getDisplayName(TextStyle.SHORT_STANDALONE, language.locale()));
    }

    /** A wall-clock time: "10:30 AM". */
    public String time(Language language, LocalTime time) {
        return format(language, "jmm", time);
    }

    private String format(Language language, String skeleton, TemporalAccessor value) {
        return marked(formatters
                .computeIfAbsent(language + skeleton, k -> {
                    var generator = DateTimePatternGenerator.getInstance(ULocale.forLocale(language.locale()));
                    // ICU writes a narrow space before AM; phones' fonts do not all have it
                    var pattern = generator.getBestPattern(skeleton).replace('\u202f', ' ');
                    return DateTimeFormatter.ofPattern(pattern, language.locale());
                })
                .format(value));
    }

    private String marked(String said) {
        return bracketed ? "[" + said + "]" : said;
    }
}
