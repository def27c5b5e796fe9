package org.hearthway.choosing.ui;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Language;
import org.hearthway.choosing.Choosing;
import org.hearthway.choosing.Fact;
import org.hearthway.words.Words;

/** Says the words of this page, and calls each fact by its name. */
record Telling(Words words, Language language, Map<String, Fact> facts) {

    static Telling of(Words words, Language language, List<Fact.Group> groups) {
        var facts = new LinkedHashMap<String, Fact>();
        groups.forEach(group -> group.facts().forEach(fact -> facts.put(fact.id(), fact)));
        return new Telling(words, language, facts);
    }

    String say(String key, Object... args) {
        return words.say(language, key, args);
    }

    String in(Bilingual text) {
        return text.in(language);
    }

    /** Where something comes from; what has no source says so in the person's language. */
    String source(String source) {
        return say("choosing.source", source.equals(Choosing.NO_SOURCE) ? say("choosing.no-source") : source);
    }

    String day(LocalDate day) {
        return words.dateWithYear(language, day);
    }

    /** A fact's name; one that a later version of the content left out keeps its identifier. */
    String name(String fact) {
        return Optional.ofNullable(facts.get(fact))
                .map(known -> in(known.name()))
                .orElse(fact);
    }

    /** What holds of a fact, in the order of its choices; a choice that was left out keeps its identifier. */
    String choices(String fact, Set<String> chosen) {
        var offered = Optional.ofNullable(facts.get(fact)).map(Fact::choices).orElse(List.of());
        var names = new ArrayList<String>();
        offered.stream().filter(choice -> chosen.contains(choice.id())).forEach(choice -> names.add(in(choice.name())));
        chosen.stream()
                .filter(id -> offered.stream().noneMatch(choice -> choice.id().equals(id)))
                .sorted()
                .forEach(names::add);
        return words.list(language, names);
    }

    /** These facts by name, in the order in which they are asked for. */
    String names(Set<String> some) {
        return words.list(
                language,
                facts.values().stream()
                        .filter(fact -> some.contains(fact.id()))
                        .map(fact -> in(fact.name()))
                        .toList());
    }
}
