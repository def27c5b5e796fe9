package org.hearthway.family;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.hearthway.program.HomeWeek;
import org.hearthway.program.HomeWeek.Outcome;
import org.hearthway.program.HomeWeek.RatedBy;
import org.hearthway.program.HomeWeek.Reason;

/** The words that the session on the phone says by itself, by short names. {@code #} and {@code @} stand for numbers. */
final class PhoneWords {

    /** Counts beyond this are told as this many. */
    private static final int MOST = HomeWeek.MOST_TICKS;

    private static final List<String> SESSION = List.of(
            "family.skip",
            "family.demo",
            "family.session.home",
            "family.session.start",
            "family.session.go-on",
            "family.session.how",
            "family.session.skip",
            "family.session.step",
            "family.session.back",
            "family.session.stop",
            "family.session.stop.now",
            "family.session.stop.signs",
            "family.session.close",
            "family.session.sent",
            "family.session.offline",
            "family.session.signed-out",
            "family.session.sign-in",
            "family.session.old",
            "family.session.old.why",
            "family.session.try",
            "family.session.not-yours",
            "family.session.refused",
            "family.session.refused.drop",
            "family.session.refused.today",
            "family.session.yesterday",
            "family.session.today",
            "family.session.waiting",
            "family.session.clock",
            "family.session.anew",
            "family.session.end",
            "family.session.note",
            "family.session.note.long",
            "family.session.rate-who",
            "family.session.why-choose",
            "family.ring.name",
            "family.ring.start",
            "family.ring.pause",
            "family.ring.go-on",
            "family.ring.again",
            "family.ring.rest",
            "family.ring.over",
            "family.ring.seconds",
            "family.ring.minutes",
            "family.ring.hold",
            "family.ring.skip",
            "family.ring.sound",
            "family.ring.buzz",
            "family.count.name",
            "family.count.add",
            "family.count.hint",
            "family.count.back",
            "family.count.round",
            "family.exercise.show",
            "family.exercise.show.pause",
            "family.exercise.show.play",
            "family.exercise.show.stop",
            "family.exercise.how",
            "family.exercise.note",
            "family.exercise.stop",
            "family.exercise.went",
            "family.exercise.why-not",
            "family.exercise.who",
            "family.exercise.severe",
            "family.exercise.save",
            "family.scale.effort.title",
            "family.scale.effort.none",
            "family.scale.effort.little",
            "family.scale.effort.fair",
            "family.scale.effort.all",
            "family.scale.pain.title",
            "family.scale.pain.none",
            "family.scale.pain.little",
            "family.scale.pain.fair",
            "family.scale.pain.all",
            "family.stop.why",
            "family.stop.when-now",
            "family.stop.rest",
            "family.call.who",
            "family.place.call",
            "family.today.stop",
            "family.today.rest",
            "family.rest.why",
            "family.today.praise",
            "family.today.comfort",
            "family.today.spent",
            "family.today.to-come",
            "family.today.exercises");

    private PhoneWords() {}

    /** Words that stand as they are. */
    static Map<String, String> single(Reader reader) {
        var words = new LinkedHashMap<String, String>();
        SESSION.forEach(key -> words.put(shortly(key), reader.say(key)));
        for (var outcome : Outcome.values()) {
            var key = "family.outcome." + outcome;
            words.put(shortly(key), reader.say(key));
        }
        for (var reason : Reason.values()) {
            var key = "family.reason." + reason;
            words.put(shortly(key), reader.large(reader.say(key)));
        }
        for (var who : RatedBy.values()) {
            var key = "family.rated." + who;
            words.put(shortly(key), reader.say(key, reader.name()));
        }
        if (reader.isHelper()) {
            words.put("session.tell", reader.say("family.help.tell", reader.name()));
        }
        return words;
    }

    /** A key without the name of the feature. */
    private static String shortly(String key) {
        return key.substring(key.indexOf('.') + 1);
    }

    /** Words that differ with a number. */
    static Map<String, List<String>> counted(Reader reader, Duration goodFor) {
        var made = reader.now().toLocalTime();
        return Map.of(
                "waits", upTo(MOST, n -> reader.say("family.session.waits", n)),
                "left", upTo(MOST, n -> reader.sentence("family.today.left", Math.max(1, n))),
                "over", upTo(MOST, n -> reader.sentence("family.today.over", Math.max(1, n))),
                "some", upTo(MOST, n -> reader.sentence("family.today.over.some", Math.max(1, n))),
                "of", upTo(10, n -> reader.say("family.scale.of", n, 10)),
                "age", upTo((int) goodFor.toDays(), n -> reader.say("family.session.age", n, made)));
    }

    private static List<String> upTo(int most, IntFunction<String> say) {
        return IntStream.rangeClosed(0, most).mapToObj(say).toList();
    }
}
