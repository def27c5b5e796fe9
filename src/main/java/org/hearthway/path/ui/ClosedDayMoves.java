package org.hearthway.path.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import java.time.LocalDate;
import java.util.stream.Collectors;
import org.hearthway.base.Action;
import org.hearthway.base.Gate;
import org.hearthway.base.Viewer;
import org.hearthway.child.Child;
import org.hearthway.child.ChildRegister;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.ClosedDayPreview;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.path.ClosedDayEffects;
import org.hearthway.path.ClosedDayEffects.Preview;
import org.hearthway.path.VisitsOnDay.Standing;
import org.hearthway.path.internal.GapWords;
import org.hearthway.path.internal.ValueWords;
import org.hearthway.words.Words;

/** Whose plans one more closed day moves, from when to when, and what is booked on it. */
@org.springframework.stereotype.Component
class ClosedDayMoves implements ClosedDayPreview {

    private final ClosedDayEffects effects;
    private final ChildRegister children;
    private final Gate gate;
    private final ClinicSettings settings;
    private final Words words;
    private final ValueWords valueWords;
    private final GapWords gaps;

    ClosedDayMoves(
            ClosedDayEffects effects,
            ChildRegister children,
            Gate gate,
            ClinicSettings settings,
            Words words,
            ValueWords valueWords,
            GapWords gaps) {
        this.effects = effects;
        this.children = children;
        this.gate = gate;
        this.settings = settings;
        this.words = words;
        this.valueWords = valueWords;
        this.gaps = gaps;
    }

    @Override
    public Component closing(Viewer.Person viewer, LocalDate day) {
        return draw(viewer, "path.closed.closing.", effects.ifClosed(viewer, day));
    }

    @Override
    public Component opening(Viewer.Person viewer, LocalDate day) {
        return draw(viewer, "path.closed.opening.", effects.ifOpened(viewer, day));
    }

    private Component draw(Viewer.Person viewer, String key, Preview preview) {
        var say = new ValueSay(new ValueSay.Parts(words, valueWords, gaps, viewer.language(), settings.zone()));
        var names = children.all(viewer).stream().collect(Collectors.toMap(Child::id, Child::fullName));
        var title = say.say(
                preview.children().isEmpty() ? key + "none" : key + "some",
                preview.children().size(),
                preview.onPaths());
        var moved = new MovedChildren(
                say,
                title,
                preview.children(),
                child -> names.getOrDefault(child, say.say("path.values.unnamed")),
                child -> gate.allows(viewer, Action.SEE_FOLDER, child));
        moved.addClassName("hw-value-moves");
        if (!preview.visits().isEmpty()) {
            var booked = new Div();
            preview.visits()
                    .forEach(visit -> booked.add(Tags.p(
                            "hw-s u-mb1",
                            booked(say, names.getOrDefault(visit.child(), say.say("path.values.unnamed")), visit))));
            moved.add(Tags.div(
                    "hw-banner u-my2 u-start",
                    Icon.DATES.draw(),
                    Tags.div(
                            "",
                            Tags.p(
                                    "hw-b",
                                    say.say(key + "visits", preview.visits().size())),
                            booked)));
        }
        return moved;
    }

    private String booked(ValueSay say, String name, Standing visit) {
        return say.say(
                "path.closed.visit", name, say.in(visit.kind()), visit.start().toLocalTime());
    }
}
