package org.hearthway.choosing.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.choosing.Fact;
import org.hearthway.choosing.engine.Guide;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.hearthway.content.FamilyText;
import org.hearthway.content.Provenance;
import org.hearthway.content.SignOff;
import org.springframework.stereotype.Component;

/** The facts that are asked for and what they mean, in {@code content/choosing}: facts.yaml and a file for each path. */
@Component
class ChoosingKind implements ContentKind {

    private static final String PLACE = "choosing";
    private static final String FACTS = "facts";

    /** The file of the facts. */
    record Asked(Bilingual name, List<Fact.Group> groups, Provenance provenance) {

        SignOff.Item item() {
            return new SignOff.Item(PLACE, FACTS, provenance.version());
        }

        /** The facts, in order. */
        List<Fact> facts() {
            return groups.stream().flatMap(group -> group.facts().stream()).toList();
        }
    }

    /** The file of a path. */
    record Read(Guide guide, Provenance provenance) {

        SignOff.Item item() {
            return new SignOff.Item(PLACE, guide.id(), provenance.version());
        }
    }

    private final GuideReader reader = new GuideReader();
    private final List<Read> guides = new ArrayList<>();
    private final Map<Integer, Entry> places = new HashMap<>();
    private Asked asked =
            new Asked(Bilingual.same(FACTS), List.of(), new Provenance("", 1, Optional.empty(), Optional.empty()));

    @Override
    public String place() {
        return PLACE;
    }

    @Override
    public void read(Entry file) {
        if (file.id().equals(FACTS)) {
            asked = new Asked(file.bilingual("name"), new FactsReader().read(file), file.provenance());
            return;
        }
        var read = new Read(reader.read(file), file.provenance());
        if (places.put(read.guide().place(), file) != null) {
            file.wrong("place", "another path stands at " + read.guide().place(), "a place of its own");
        }
        guides.add(read);
        guides.sort(Comparator.comparingInt(each -> each.guide().place()));
    }

    @Override
    public void check() {
        reader.check(facts());
    }

    @Override
    public List<FamilyText> familyTexts() {
        var all = new ArrayList<FamilyText>();
        if (!asked.groups().isEmpty()) {
            var texts = asked.facts().stream().map(Fact::family).toList();
            all.add(new FamilyText(asked.item(), asked.name(), texts, asked.provenance()));
        }
        guides.forEach(read -> {
            var pieces = GuidePieces.of(read.guide());
            all.add(new FamilyText(read.item(), pieces.get(0), pieces.subList(1, pieces.size()), read.provenance()));
        });
        return List.copyOf(all);
    }

    /** The facts with what families read of them. */
    Asked asked() {
        return asked;
    }

    /** The facts, by identifier. */
    Map<String, Fact> facts() {
        var facts = new LinkedHashMap<String, Fact>();
        asked.facts().forEach(fact -> facts.put(fact.id(), fact));
        return facts;
    }

    /** The paths, in their places. */
    List<Read> guides() {
        return List.copyOf(guides);
    }
}
