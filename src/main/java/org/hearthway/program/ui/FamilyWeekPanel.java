package org.hearthway.program.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.html.Section;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import org.hearthway.parts.Icon;
import org.hearthway.parts.Tags;
import org.hearthway.program.FamilyTimes.Away;
import org.hearthway.program.FamilyTimes.Fit;
import org.hearthway.program.FamilyTimes.Out;
import org.hearthway.program.FamilyTimes.Version;
import org.hearthway.program.engine.week.FamilyWeek;
import org.hearthway.program.engine.week.WeekPlan.Way;

/** The family's week beside its program: when it has time, when the child is away, and what does not fit and why. */
final class FamilyWeekPanel extends Section {

    private final transient Say say;
    private final transient LocalDate today;
    private final transient ZoneId zone;

    /**
     * The panel.
     *
     * @param versions of the family's times, newest first
     * @param edit where the times are entered on the family's behalf; empty for who may not
     */
    FamilyWeekPanel(
            Say say,
            LocalDate today,
            ZoneId zone,
            List<Version> versions,
            List<Away> away,
            Optional<Fit> fit,
            Optional<String> edit) {
        this.say = say;
        this.today = today;
        this.zone = zone;
        addClassNames("hw-family-week", "u-mt5");
        getElement().setAttribute("aria-label", say.say("week"));
        add(Tags.h2("u-l u-mb2", say.say("week")));
        fit.ifPresent(one -> add(out(one)));
        versions.stream().findFirst().ifPresentOrElse(this::times, () -> add(Tags.p("hw-quiet", say.say("week.none"))));
        away.forEach(one -> add(Tags.p("", away(one))));
        if (versions.size() > 1) {
            add(earlier(versions.subList(1, versions.size())));
        }
        edit.ifPresent(address -> add(Tags.link(
                "hw-button plain u-mt3", address, say.say(versions.isEmpty() ? "week.enter" : "week.change"))));
    }

    private void times(Version version) {
        var times = version.times();
        if (times.free().isEmpty()) {
            add(strip(say.say(times.slots().isEmpty() ? "week.no-slots" : "week.all-taken")));
        } else {
            add(Tags.p("", say.say("week.minutes", times.minutesAWeek())));
        }
        var list = el("ul", "hw-family-week-times");
        var slots = new LinkedHashMap<String, List<DayOfWeek>>();
        times.slots()
                .forEach(slot -> slots.computeIfAbsent(
                                say.say(
                                        "week.slot",
                                        clock(slot.start()),
                                        slot.minutes(),
                                        slot.helpers().size(),
                                        say.words().list(say.language(), slot.helpers())),
                                words -> new ArrayList<>())
                        .add(slot.day()));
        times.busy()
                .forEach(busy -> slots.computeIfAbsent(
                                say.say("week.busy", clock(busy.from()), clock(busy.until()), busy.what()),
                                words -> new ArrayList<>())
                        .add(busy.day()));
        slots.forEach((words, days) -> {
            var item = el("li", "");
            item.add(Tags.span("hw-b", days(days)), Tags.span("", " " + words));
            list.add(item);
        });
        add(list);
        times.most().ifPresent(most -> add(Tags.p("", say.say("week.most", most))));
        add(Tags.p("hw-quiet u-mt1", by(version)));
    }

    private String by(Version version) {
        return say.say(
                version.onBehalf() ? "week.by-team" : "week.by",
                version.by(),
                say.date(LocalDate.ofInstant(version.at(), zone)));
    }

    /** What was entered before: by whom, when, how much time it gave. */
    private HtmlContainer earlier(List<Version> versions) {
        var list = el("ul", "");
        versions.forEach(version -> {
            var item = el("li", "");
            item.setText(by(version) + " · "
                    + say.say("week.minutes", version.times().minutesAWeek()));
            list.add(item);
        });
        var summary = el("summary", "");
        summary.setText(say.say("week.earlier", versions.size()));
        var details = el("details", "hw-unfold");
        details.add(summary, list);
        return details;
    }

    private String days(List<DayOfWeek> days) {
        return say.words()
                .list(
                        say.language(),
                        days.stream().distinct().sorted().map(this::day).toList());
    }

    private String day(DayOfWeek day) {
        return say.words().shortWeekday(say.language(), today.with(day));
    }

    private String clock(LocalTime time) {
        return say.words().time(say.language(), time);
    }

    private String away(Away away) {
        return say.say("week.away", say.one("week.away", away.reason()), say.date(away.first()), say.date(away.last()));
    }

    private HtmlContainer out(Fit fit) {
        var words = Tags.div("", Tags.span("hw-b", say.say("week.out")));
        var list = el("ul", "hw-family-week-out");
        fit.out().forEach(out -> list.add(out(out)));
        words.add(list);
        return strip(words);
    }

    private HtmlContainer out(Out out) {
        var item = el("li", "");
        item.add(
                Tags.span(
                        "hw-b",
                        say.say(
                                "week.out.one",
                                say.name(out.exercise().id()),
                                out.out().sessions())),
                Tags.span("", " " + say.one("week.why", out.out().reason())));
        if (out.out().ways().isEmpty()) {
            item.add(Tags.span("u-block hw-quiet", say.say("week.way.none")));
        } else {
            item.add(Tags.span(
                    "u-block",
                    say.say(
                            "week.ways",
                            say.words()
                                    .list(
                                            say.language(),
                                            out.out().ways().stream()
                                                    .map(way -> way(way, out))
                                                    .toList()))));
        }
        return item;
    }

    private String way(Way way, Out out) {
        if (way instanceof Way.Longer longer) {
            return say.say("week.way.longer", at(longer.slot()), longer.minutes());
        }
        if (way instanceof Way.Shorter shorter) {
            return say.say("week.way.shorter", shorter.minutes(), at(shorter.slot()));
        }
        if (way instanceof Way.Help help) {
            return say.say("week.way.help", at(help.slot()));
        }
        var instead = (Way.InsteadOf) way;
        return say.say(
                "week.way.instead",
                out.instead().map(exercise -> say.name(exercise.id())).orElse(instead.exercise()),
                at(instead.slot()));
    }

    private String at(FamilyWeek.Slot slot) {
        return day(slot.day()) + " " + clock(slot.start());
    }

    private static HtmlContainer strip(String words) {
        return strip(Tags.div("", Tags.span("", words)));
    }

    private static HtmlContainer strip(Component words) {
        var strip = el("div", "hw-strip ember u-mb3");
        strip.add(Icon.INFO.draw(), words);
        strip.getElement().setAttribute("role", "note");
        return strip;
    }

    private static HtmlContainer el(String tag, String classes) {
        var element = new HtmlContainer(tag);
        if (!classes.isEmpty()) {
            element.addClassNames(classes.split(" "));
        }
        return element;
    }
}
