package org.hearthway.path.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import java.time.LocalDate;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.path.Plans.Change;
import org.hearthway.path.Plans.Preview;
import org.hearthway.path.engine.Plan.Planned;

/** What a change would move, from and to, and what it leaves. */
final class MoveList extends Div {

    MoveList(StageWords words, Preview preview, Change change) {
        var kept = preview.after().stage(change.stage());
        var today = preview.after().today();
        add(
                Tags.h2(
                        "u-l",
                        kept.map(after -> title(words, preview, change, after, today))
                                .orElseGet(() -> words.say("path.preview.leaves"))),
                Tags.p("hw-s hw-quiet u-mb1", words.say("path.preview.unsaved")),
                new EffectList(words, preview.effect(), today));
        kept.filter(after -> preview.outsideTheRule()).ifPresent(after -> add(outside(words, after, today)));
    }

    private static String title(StageWords words, Preview preview, Change change, Planned after, LocalDate today) {
        var name = after.stage().name().in(words.language());
        if (change instanceof Change.End end) {
            return words.say("path.preview.ends", name, words.date(end.day(), today));
        }
        var day = words.date(after.start(), today);
        if (preview.before().stage(after.point()).isEmpty()) {
            return words.say("path.preview.comes", name, day);
        }
        return preview.effect().moves().isEmpty()
                ? words.say("path.preview.stays", name, day)
                : words.say("path.preview.title", name, day);
    }

    private static Component outside(StageWords words, Planned after, LocalDate today) {
        var says = after.latest()
                .map(latest -> words.say(
                        "path.preview.outside", words.date(after.earliest(), today), words.date(latest, today)))
                .orElseGet(() -> words.say("path.preview.too-early", words.date(after.earliest(), today)));
        return Tags.div("hw-banner u-my2", Icon.CLASH.draw(), Tags.div("", new Span(says)));
    }
}
