package org.hearthway.paper.internal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthway.base.Bilingual;
import org.hearthway.child.Device;
import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.hearthway.content.FamilyText;
import org.hearthway.content.Provenance;
import org.hearthway.content.SignOff;
import org.hearthway.paper.EmergencySheet.Warning;
import org.hearthway.paper.EmergencySheet.Weight;
import org.springframework.stereotype.Component;

/** The warnings in {@code content/emergency}: one file for each kind of device. */
@Component
class WarningKind implements ContentKind {

    private static final String PLACE = "emergency";

    /** One page must hold all of a child's warnings. */
    private static final int LONGEST = 260;

    private record Text(String id, Warning warning, Provenance provenance) {
        SignOff.Item item() {
            return new SignOff.Item(PLACE, id, provenance.version());
        }
    }

    private final SignOff signOff;
    private final Map<String, Text> texts = new LinkedHashMap<>();

    WarningKind(SignOff signOff) {
        this.signOff = signOff;
    }

    @Override
    public String place() {
        return PLACE;
    }

    @Override
    public void read(Entry file) {
        var device = file.choice("device", Device.Kind.class);
        var never = 0;
        for (var block : file.list("warnings")) {
            var id = block.text("id");
            var weight = block.choice("weight", Weight.class);
            var says = block.bilingual("says");
            var text = new Text(id, new Warning(device, weight, says), block.provenance());
            block.done();
            if (says.en().length() > LONGEST || says.es().length() > LONGEST) {
                block.wrong("says", "\"says\" is too long", "at most " + LONGEST + " characters in each language");
            }
            if (texts.putIfAbsent(id, text) != null) {
                block.wrong("id", "a warning \"" + id + "\" stands already", "an identifier of its own");
            }
            never += weight == Weight.NEVER ? 1 : 0;
        }
        if (never == 0) {
            file.wrong("warnings", "nothing says what must never be done", "at least one weight: never");
        }
    }

    @Override
    public List<FamilyText> familyTexts() {
        return texts.values().stream()
                .map(text -> new FamilyText(
                        text.item(), title(text), List.of(text.warning().says()), text.provenance()))
                .collect(Collectors.toList());
    }

    private static Bilingual title(Text text) {
        return text.warning().says();
    }

    /** What the clinic has accepted about these kinds, prohibitions first. */
    List<Warning> about(Set<Device.Kind> kinds) {
        var some = texts.values().stream()
                .filter(text -> kinds.contains(text.warning().device()))
                .collect(Collectors.toList());
        var shown = signOff.shownAmong(some.stream().map(Text::item).collect(Collectors.toList()));
        return some.stream()
                .filter(text -> shown.contains(text.item()))
                .map(Text::warning)
                .sorted(java.util.Comparator.comparing(Warning::weight))
                .collect(Collectors.toList());
    }
}
