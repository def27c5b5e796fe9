package org.hearthway.family;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.access.Circle;
import org.hearthway.base.Action;
import org.hearthway.base.Gate;
import org.hearthway.base.Invalid;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.program.FamilyTimes;
import org.hearthway.program.FamilyTimes.Away;
import org.hearthway.program.FamilyTimes.Reason;
import org.hearthway.program.FamilyTimes.Times;
import org.hearthway.program.FamilyTimes.Version;

/** Our week: when there is time for exercises, who helps then, school and clubs, and days away. */
@Route("my/:child/our-week")
@PermitAll
class OurWeekView extends FamilyPage {

    private final transient FamilyTimes times;
    private final transient LeftOut leftOut;
    private final transient Circle circle;
    private final transient Gate gate;
    private transient UUID key = UUID.randomUUID();

    OurWeekView(Readers readers, FamilyTimes times, LeftOut leftOut, Circle circle, Gate gate) {
        super(readers);
        this.times = times;
        this.leftOut = leftOut;
        this.circle = circle;
        this.gate = gate;
    }

    @Override
    Place place() {
        return Place.WEEK;
    }

    @Override
    String title(Reader reader) {
        return reader.say("family.ours.title");
    }

    @Override
    Optional<String> below() {
        return Optional.of(title(reader()));
    }

    @Override
    void draw(Reader reader) {
        var now = times.latest(reader.viewer(), reader.id());
        add(Bits.hero(
                reader.say("family.notes.about", reader.name()),
                title(reader),
                Tags.p("u-lead", reader.say("family.ours.means"))));
        var behalf = reader.viewer().isStaff();
        if (behalf) {
            var words = Tags.div("", Tags.span("", reader.say("family.ours.on-behalf", reader.name()) + " "));
            words.add(Tags.link(
                    "u-kiln", "staff/child/" + reader.id() + "/program", reader.say("family.ours.to-program")));
            add(Bits.strip("ember u-mb3", Icon.INFO, words));
        }
        now.ifPresent(version -> add(saved(reader, version)));
        now.filter(version -> version.times().free().isEmpty()).ifPresent(version -> add(noTime(reader, version)));
        leftOut.strip(reader, reader.today()).ifPresent(this::add);
        if (gate.allows(reader.viewer(), behalf ? Action.CHANGE_PROGRAM : Action.LOG_SESSION, reader.id())) {
            add(new WeekForm(
                    reader,
                    now.map(Version::times).orElse(Times.NONE),
                    people(reader),
                    entered -> save(reader, entered, now.map(Version::number).orElse(0))));
            add(awayPart(reader));
        } else {
            add(Bits.strip("quiet", Icon.LOCK, reader.say("family.view-only")));
        }
    }

    private static Component saved(Reader reader, Version version) {
        return Tags.p(
                "hw-s hw-quiet u-mb3",
                reader.say(
                        version.onBehalf() ? "family.ours.saved-by-team" : "family.ours.saved-by",
                        version.by(),
                        LocalDate.ofInstant(version.at(), reader.viewer().zone()),
                        version.effective().isAfter(reader.today()) ? 1 : 0));
    }

    /** A week with no free day: what that means, and the ways out. */
    private static Component noTime(Reader reader, Version version) {
        var words = Tags.div(
                "",
                Bits.el(
                        "b",
                        "",
                        reader.say(version.times().slots().isEmpty() ? "family.ours.none" : "family.ours.all-taken")));
        words.add(Bits.el("span", "u-block", reader.say("family.ours.none.then")));
        return Bits.strip("ember u-mb3", Icon.INFO, words);
    }

    /** Those who may help by their first names: the reader first, unless that is somebody of the team. */
    private List<String> people(Reader reader) {
        var names = new ArrayList<String>();
        circle.members(reader.viewer(), reader.id()).forEach(member -> {
            var name = first(member.name());
            if (member.account().equals(reader.viewer().account())) {
                names.add(0, name);
            } else {
                names.add(name);
            }
        });
        circle.helpers(reader.viewer(), reader.id()).stream()
                .filter(aide -> !aide.helper().over())
                .forEach(aide -> names.add(first(aide.name())));
        return names.stream().distinct().toList();
    }

    private static String first(String name) {
        var first = name.split(" ", 2)[0];
        return first.length() > FamilyTimes.NAME ? first.substring(0, FamilyTimes.NAME) : first;
    }

    private void save(Reader reader, Times entered, int seen) {
        try {
            var version = times.save(reader.viewer(), reader.id(), entered, seen);
            Told.done(reader.say(
                    version.effective().isAfter(reader.today()) ? "family.ours.saved.tomorrow" : "family.ours.saved"));
            refresh();
        } catch (Overtaken overtaken) {
            Told.couldNot(reader.say("family.ours.overtaken"));
        }
    }

    // days away

    private Component awayPart(Reader reader) {
        var part = Tags.div(
                "u-mt5",
                Tags.h2("hw-h2", reader.say("family.ours.away")),
                Tags.p("hw-s hw-quiet u-mb3", reader.say("family.ours.away.means")));
        var list = Bits.el("ul", "hw-stack u-gap2");
        times.away(reader.viewer(), reader.id()).forEach(away -> list.add(gone(reader, away)));
        part.add(list, awayForm(reader));
        return part;
    }

    /** "Holiday, Friday, March 13 to Monday, March 16." */
    static String said(Reader reader, Away away) {
        return away.first().equals(away.last())
                ? reader.say("family.ours.away.day", reader.say(reason(away.reason())), away.first())
                : reader.say("family.ours.away.days", reader.say(reason(away.reason())), away.first(), away.last());
    }

    private static String reason(Reason reason) {
        return "family.ours.away.reason." + reason;
    }

    private Component gone(Reader reader, Away away) {
        var begun = !away.first().isAfter(reader.today());
        var item = Bits.el("li", "hw-sheet hw-told", Bits.el("p", "hw-b", said(reader, away)));
        item.add(Tags.p("hw-s hw-quiet", reader.say("family.ours.away.by", away.by())));
        item.add(Tags.button(
                "plain wide", reader.say(begun ? "family.ours.away.back" : "family.ours.away.undo"), pressed -> {
                    try {
                        times.comeBack(reader.viewer(), reader.id(), away.key());
                        Told.done(reader.say("family.ours.away.planned-again"));
                    } catch (Overtaken overtaken) {
                        Told.couldNot(reader.say("family.ours.overtaken"));
                    }
                    refresh();
                }));
        return item;
    }

    private Component awayForm(Reader reader) {
        var why = Choice.of(
                reader,
                "family.ours.away.why",
                "family.ours.away.reason.",
                List.of(Reason.values()),
                "hw-chips",
                each -> Optional.empty());
        var first = day(reader, "family.ours.away.first", "away-first");
        first.setValue(reader.today());
        var last = day(reader, "family.ours.away.last", "away-last");
        var fault = Tags.p("hw-fault", "");
        fault.getElement().setAttribute("role", "alert");
        fault.setVisible(false);
        Map<String, HasValidation> fields = Map.of("first", first, "last", last);
        var save = Tags.button("main wide", reader.say("family.ours.away.save"), pressed -> {
            fault.setVisible(why.chosen().isEmpty());
            fault.setText(reader.say("family.ours.away.no-why"));
            if (why.chosen().isEmpty()) {
                return;
            }
            try {
                if (first.getValue() == null) {
                    throw new Invalid(Problem.at("first", "family.ours.away.no-day"));
                }
                times.goAway(
                        reader.viewer(),
                        reader.id(),
                        key,
                        first.getValue(),
                        Optional.ofNullable(last.getValue()).orElse(first.getValue()),
                        why.chosen().orElseThrow());
                key = UUID.randomUUID();
                Told.done(reader.say("family.ours.away.saved"));
                refresh();
            } catch (Invalid invalid) {
                Told.problems(invalid.problems(), fields, reader.words(), reader.language());
            }
        });
        save.setId("away-save");
        var form = Bits.el(
                "details",
                "hw-more u-mt3",
                Bits.el("summary", "hw-button plain wide", reader.say("family.ours.away.new")));
        form.add(Tags.div("hw-stack u-gap2 u-mt3", why, first, last, fault, save));
        return form;
    }

    private static DayField day(Reader reader, String key, String id) {
        var field = new DayField(reader.say(key), reader.words(), reader.language());
        field.setWidthFull();
        field.setId(id);
        return field;
    }
}
