package org.hearthway.equipment.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hearthway.base.Bilingual;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.hearthway.content.FamilyText;
import org.hearthway.content.Provenance;
import org.hearthway.content.SignOff;
import org.hearthway.equipment.Kind;
import org.hearthway.equipment.Kind.Sort;
import org.springframework.stereotype.Component;

/** The kinds of things to wear and to use, one file each in {@code content/equipment}, as the clinic tells them. */
@Component
class KindFiles implements ContentKind {

    private final Map<String, Kind> kinds = new HashMap<>();
    private final SignOff signOff;

    KindFiles(SignOff signOff) {
        this.signOff = signOff;
    }

    @Override
    public String place() {
        return "equipment";
    }

    @Override
    public void read(Entry file) {
        var kind = new Kind(
                file.id(),
                file.choice("sort", Sort.class),
                file.bilingual("name"),
                file.bilinguals("says"),
                file.maybeInteger("skin-every-days", 1, ItemRules.LONGEST_INTERVAL),
                file.maybeInteger("growth-every-days", 1, ItemRules.LONGEST_INTERVAL),
                file.provenance());
        if (kind.sort() == Sort.CAST && of(Sort.CAST).findAny().isPresent()) {
            file.wrong("sort", "another file is for casts", "one file for them");
        }
        kinds.put(kind.id(), kind);
    }

    @Override
    public List<FamilyText> familyTexts() {
        return kinds.values().stream()
                .map(kind -> new FamilyText(item(kind), kind.name(), kind.says(), kind.provenance()))
                .toList();
    }

    private static SignOff.Item item(Kind kind) {
        return new SignOff.Item("equipment", kind.id(), kind.provenance().version());
    }

    private Stream<Kind> of(Sort sort) {
        return kinds.values().stream().filter(kind -> kind.sort() == sort);
    }

    /** Casts as families read of them. */
    Optional<Kind> cast() {
        return of(Sort.CAST).findFirst().map(kind -> told(kind, signOff.isShown(item(kind))));
    }

    /** What is worn and used, by English name, as families read of it. */
    List<Kind> wornAndUsed() {
        return wornAndUsed(kinds.keySet());
    }

    /** Those of them with these identifiers. */
    List<Kind> wornAndUsed(Set<String> ids) {
        var some = kinds.values().stream()
                .filter(kind -> kind.sort() != Sort.CAST && ids.contains(kind.id()))
                .sorted(Comparator.comparing(kind -> kind.name().en()))
                .toList();
        var shown = signOff.shownAmong(some.stream().map(KindFiles::item).toList());
        return some.stream().map(kind -> told(kind, shown.contains(item(kind)))).toList();
    }

    /** In the clinic's own words where it has written some, and without words that it has not accepted. */
    private Kind told(Kind was, boolean shown) {
        var own = signOff.ownWords(item(was));
        var says = new ArrayList<Bilingual>();
        for (var place = 0; shown && place < was.says().size(); place++) {
            says.add(own.getOrDefault(place + 1, was.says().get(place)));
        }
        return new Kind(
                was.id(),
                was.sort(),
                own.getOrDefault(0, was.name()),
                says,
                was.skinEvery(),
                was.growthEvery(),
                was.provenance());
    }

    /** What stands for a kind that the content no longer has. */
    Kind dropped(String id, Bilingual name) {
        var nowhere = new Provenance("", 1, Optional.empty(), Optional.empty());
        return new Kind(id, Sort.USED, name, List.of(), Optional.empty(), Optional.empty(), nowhere);
    }
}
