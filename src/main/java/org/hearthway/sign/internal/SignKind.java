package org.hearthway.sign.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Problem;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.hearthway.content.FamilyText;
import org.hearthway.content.SignOff;
import org.hearthway.path.Plans;
import org.hearthway.path.SignNames;
import org.hearthway.path.engine.Template;
import org.hearthway.sign.Sign;
import org.hearthway.sign.Sign.Topic;
import org.hearthway.sign.Sign.Urgency;
import org.hearthway.words.ReadingLevel;
import org.springframework.stereotype.Component;

/**
 * The signs in {@code content/signs}: each file has one topic, says which pathways it concerns, and lists its signs.
 * Refuses what could make a family wait.
 */
@Component
class SignKind implements ContentKind, SignNames {

    /** Sixth grade, the clinic's own bound for family words. */
    static final double HARDEST_GRADE = 6.9;

    /** "Fairly easy" on the Fernández-Huerta scale begins here. */
    static final double LEAST_EASE = 70;

    private static final int LONGEST = 300;
    private static final Pattern WAITING = Pattern.compile("(?<!\\bnot )\\bwait", Pattern.CASE_INSENSITIVE);
    private static final Pattern WAITING_SPANISH =
            Pattern.compile("(?<!\\bno )\\b(?:esper|aguard)[ae]", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

    private record TopicFile(Entry entry, Topic topic, boolean everyone, Set<String> paths) {}

    private final Plans plans;
    private final Map<String, Sign> signs = new LinkedHashMap<>();
    private final List<TopicFile> files = new ArrayList<>();

    SignKind(Plans plans) {
        this.plans = plans;
    }

    @Override
    public Set<String> names() {
        return Set.copyOf(signs.keySet());
    }

    @Override
    public String place() {
        return "signs";
    }

    @Override
    public void read(Entry file) {
        var topic = file.choice("topic", Topic.class);
        var everyone = file.yes("everyone");
        if (!everyone && !file.has("paths")) {
            file.wrong("paths", "\"paths\" is missing", "a list of pathways, or everyone: yes");
        }
        files.add(new TopicFile(file, topic, everyone, Set.copyOf(new TreeSet<>(file.texts("paths")))));
        for (var block : file.list("signs")) {
            var sign = new Sign(
                    block.text("id"),
                    topic,
                    block.choice("urgency", Urgency.class),
                    block.maybeChoice("drug", Sign.Drug.class),
                    block.bilingual("says"),
                    block.provenance());
            block.done();
            checkWords(block, sign);
            if (signs.putIfAbsent(sign.id(), sign) != null) {
                block.wrong("id", "a sign \"" + sign.id() + "\" stands already", "an identifier of its own");
            }
        }
    }

    private static void checkWords(Entry block, Sign sign) {
        var en = sign.says().en();
        var es = sign.says().es();
        if (en.length() > LONGEST || es.length() > LONGEST) {
            block.wrong("says", "\"says\" is too long", "at most " + LONGEST + " characters in each language");
        }
        if (tellsToWait(sign.says())) {
            block.wrong("says", "\"says\" tells a family to wait", "words that never say so: not sure means call");
        }
        if (!hasWords(en) || !hasWords(es)) {
            return;
        }
        var grade = ReadingLevel.english(en).fleschKincaidGrade();
        if (grade > HARDEST_GRADE) {
            block.wrong(
                    "says",
                    String.format("the English text reads at grade %.1f", grade),
                    "grade " + HARDEST_GRADE + " or lower: shorter sentences, shorter words");
        }
        var ease = ReadingLevel.spanish(es).fernandezHuertaEase();
        if (ease < LEAST_EASE) {
            block.wrong(
                    "says",
                    String.format("the Spanish text has a reading ease of %.0f", ease),
                    LEAST_EASE + " or more: shorter sentences, shorter words");
        }
    }

    private static boolean tellsToWait(Bilingual says) {
        return WAITING.matcher(says.en()).find()
                || WAITING_SPANISH.matcher(says.es()).find();
    }

    /** A sign in the clinic's own words is held to what the file is held to, however short it is. */
    @Override
    public List<Problem> problems(Bilingual words) {
        var problems = new ArrayList<Problem>();
        if (tellsToWait(words)) {
            problems.add(Problem.at(WAITING.matcher(words.en()).find() ? "en" : "es", "sign.problem.own-waits"));
        }
        if (ReadingLevel.english(words.en()).fleschKincaidGrade() > HARDEST_GRADE) {
            problems.add(Problem.at("en", "sign.problem.own-hard"));
        }
        if (ReadingLevel.spanish(words.es()).fernandezHuertaEase() < LEAST_EASE) {
            problems.add(Problem.at("es", "sign.problem.own-hard"));
        }
        return problems;
    }

    private static boolean hasWords(String text) {
        return text.chars().anyMatch(Character::isLetterOrDigit);
    }

    @Override
    public void check() {
        var urgencies = new EnumMap<Topic, Set<Urgency>>(Topic.class);
        signs.values()
                .forEach(sign -> urgencies
                        .computeIfAbsent(sign.topic(), t -> new HashSet<>())
                        .add(sign.urgency()));
        var known = plans.pathways().stream().map(Template::id).collect(Collectors.toCollection(TreeSet::new));
        for (var file : files) {
            if (!urgencies.getOrDefault(file.topic(), Set.of()).contains(Urgency.NOW)) {
                file.entry().wrong("signs", "no sign of this topic calls for help now", "at least one urgency: now");
            }
            file.paths().stream()
                    .filter(path -> !known.contains(path))
                    .forEach(path -> file.entry()
                            .wrong("paths", "there is no pathway " + path, "one of " + String.join(", ", known)));
        }
        known.removeAll(files.stream().flatMap(file -> file.paths().stream()).collect(Collectors.toSet()));
        if (!known.isEmpty() && !files.isEmpty()) {
            var first = files.get(0).entry();
            first.wrong(
                    "topic",
                    "no file of signs names the pathway " + String.join(", ", known),
                    "each pathway under paths of at least one file");
        }
    }

    @Override
    public List<FamilyText> familyTexts() {
        return signs.values().stream()
                .map(sign -> new FamilyText(item(sign), sign.says(), List.of(), sign.provenance()))
                .collect(Collectors.toList());
    }

    /** What is accepted when an administrator accepts this sign. */
    static SignOff.Item item(Sign sign) {
        return new SignOff.Item("signs", sign.id(), sign.provenance().version());
    }

    /** Every sign, most urgent first, in the order of the files within one urgency. */
    List<Sign> all() {
        return signs.values().stream()
                .sorted(Comparator.comparing(Sign::urgency))
                .collect(Collectors.toList());
    }

    Optional<Sign> find(String id) {
        return Optional.ofNullable(signs.get(id));
    }

    /** Topics that concern everyone, and those of the pathway; all of them when the pathway is not known. */
    Set<Topic> topics(List<String> pathways) {
        return files.stream()
                .filter(file -> file.everyone()
                        || pathways.isEmpty()
                        || pathways.stream().anyMatch(file.paths()::contains))
                .map(TopicFile::topic)
                .collect(Collectors.toUnmodifiableSet());
    }
}
