package org.hearthway.family;

import com.vaadin.flow.component.Component;
import java.util.ArrayList;
import java.util.List;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.sign.CallLines;
import org.hearthway.sign.Sign;
import org.hearthway.sign.Sign.Urgency;
import org.hearthway.sign.Signs;

/** The signs of too little and of too much drug from the pump, each with whom to call. */
@org.springframework.stereotype.Component
class RefillSigns {

    private final Signs signs;
    private final CallLines lines;

    RefillSigns(Signs signs, CallLines lines) {
        this.signs = signs;
        this.lines = lines;
    }

    /** A fold for each, that of too little first: it is what a late refill leads to. */
    List<Component> folds(Reader reader) {
        var folds = new ArrayList<Component>();
        for (var drug : Sign.Drug.values()) {
            var these = signs.all().stream()
                    .filter(sign -> sign.drug().filter(drug::equals).isPresent())
                    .toList();
            if (!these.isEmpty()) {
                folds.add(fold(reader, drug, these));
            }
        }
        return folds;
    }

    private Component fold(Reader reader, Sign.Drug drug, List<Sign> these) {
        var all = Tags.div("hw-cares");
        for (var urgency : Urgency.values()) {
            var some = these.stream().filter(sign -> sign.urgency() == urgency).toList();
            CallRows.only(lines.lines(), urgency).stream()
                    .filter(line -> !some.isEmpty())
                    .forEach(line -> {
                        var list = Bits.el("ul", "");
                        some.forEach(sign -> list.add(Bits.el("li", "", reader.text(sign.says()))));
                        all.add(
                                Bits.el(
                                        "h5",
                                        "",
                                        CallRows.icon(urgency).draw("sm"),
                                        Tags.span("", reader.text(line.title()))),
                                list);
                    });
        }
        all.add(Tags.link("hw-button plain wide", reader.address("call"), reader.say("family.place.call")));
        var title = Tags.span("", Bits.el("b", "", reader.say("family.refill.signs." + drug)));
        return Bits.el(
                "details",
                "hw-mind berry u-mt3",
                Bits.el("summary", "", Icon.CALL.draw(), title, Icon.DOWN.draw("sm")),
                all);
    }
}
