package org.hearthway.access.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.EmailField;
import com.vaadin.flow.component.textfield.TextField;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthway.access.Circle.Aide;
import org.hearthway.access.Circle.Member;
import org.hearthway.access.Circle.NewHelper;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.base.Viewer;
import org.hearthway.child.Helpers.Consent;
import org.hearthway.child.Helpers.Help;
import org.hearthway.child.Helpers.Kind;
import org.hearthway.child.Households.Reach;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;

/** Who helps a child outside the clinic, until when and with whose consent; asking somebody, and ending it. */
final class HelpersSheet extends Div {

    private final transient HomesPanel.Parts parts;
    private final transient Viewer.Person viewer;
    private final transient ChildId child;
    private final transient List<Member> members;
    private final Language language;
    private final Div link = new Div();

    HelpersSheet(HomesPanel.Parts parts, Viewer.Person viewer, ChildId child, List<Member> members) {
        this.parts = parts;
        this.viewer = viewer;
        this.child = child;
        this.members = members;
        this.language = viewer.language();
        addClassNames("hw-sheet", "hw-side-form", "hw-helpers");
        draw();
    }

    private void draw() {
        removeAll();
        add(Tags.h2("", say("access.helpers.title")), Tags.p("hw-sub", say("access.helpers.sees")), link);
        var may = parts.gate().allows(viewer, Action.LINK_HELPER, child);
        var all = parts.circle().helpers(viewer, child);
        if (all.isEmpty()) {
            add(Tags.p("hw-quiet", say("access.helpers.none")));
        }
        all.forEach(aide -> add(line(aide, may)));
        if (may) {
            form();
        }
    }

    private Component line(Aide aide, boolean may) {
        var helper = aide.helper();
        var line = Tags.div("hw-helper" + (helper.over() ? " over" : ""));
        var words = Tags.div("");
        words.add(Tags.p("hw-b", aide.name()));
        words.add(Tags.p(
                "hw-s",
                say(
                        helper.over() ? "access.helpers.over" : "access.helpers.until",
                        say("access.helpers.kind." + helper.help().kind().name()),
                        parts.words().dateWithYear(language, helper.help().lastDay()))));
        words.add(Tags.p(
                "hw-sub",
                say(
                        "access.helpers.consent",
                        aide.consentBy(),
                        parts.words()
                                .dateWithYear(language, helper.help().consent().on()))));
        line.add(words);
        if (may && !helper.over()) {
            var end = Tags.button("text hw-word", say("access.helpers.end"), pressed -> {
                try {
                    parts.helpers().end(viewer, child, helper.account(), helper.number());
                } catch (Overtaken overtaken) {
                    Told.couldNot(say("access.overtaken"));
                }
                draw();
            });
            end.getElement().setAttribute("aria-label", say("access.helpers.end") + ": " + aide.name());
            line.add(end);
        }
        return line;
    }

    private void form() {
        var name = new TextField(say("access.form.name"));
        name.setId("helper-name");
        var email = new EmailField(say("access.form.email"));
        email.setManualValidation(true);
        email.setId("helper-email");
        var kind = new Select<Kind>();
        kind.setLabel(say("access.helpers.kind"));
        kind.setItems(Kind.values());
        kind.setItemLabelGenerator(each -> say("access.helpers.kind." + each.name()));
        kind.setValue(Kind.THERAPIST);
        var speaks = new Select<Language>();
        speaks.setLabel(say("access.form.language"));
        speaks.setItems(Language.values());
        speaks.setItemLabelGenerator(each -> say("access.language." + each.name()));
        speaks.setValue(Language.EN);
        var lastDay = new DayField(say("access.helpers.last-day"), parts.words(), language);
        lastDay.setId("helper-last-day");
        var consentBy = new Select<Member>();
        consentBy.setLabel(say("access.helpers.consent-by"));
        consentBy.setItems(
                members.stream().filter(member -> member.reach() == Reach.FULL).toList());
        consentBy.setItemLabelGenerator(Member::name);
        consentBy.setId("helper-consent-by");
        var consentOn = new DayField(say("access.helpers.consent-on"), parts.words(), language);
        consentOn.setValue(parts.today());
        consentOn.setId("helper-consent-on");
        Map<String, HasValidation> fields = Map.of(
                "name", name, "email", email, "lastDay", lastDay, "consentBy", consentBy, "consentOn", consentOn);
        var ask = Tags.button("main wide", say("access.helpers.ask"), pressed -> {
            try {
                ask(
                        name.getValue(),
                        email.getValue(),
                        speaks.getValue(),
                        kind.getValue(),
                        Optional.ofNullable(lastDay.getValue()),
                        Optional.ofNullable(consentBy.getValue()),
                        Optional.ofNullable(consentOn.getValue()));
            } catch (Invalid invalid) {
                Told.problems(invalid.problems(), fields, parts.words(), language);
            } catch (Overtaken overtaken) {
                Told.couldNot(say("access.overtaken"));
            }
        });
        ask.setId("helper-ask");
        var unfold = new com.vaadin.flow.component.html.NativeDetails(say("access.helpers.new"));
        unfold.addClassName("hw-unfold");
        unfold.setContent(Tags.div(
                "hw-side-form",
                name,
                email,
                Tags.div("two", kind, speaks),
                lastDay,
                Tags.div("two", consentBy, consentOn),
                ask));
        add(unfold);
    }

    private void ask(
            String name,
            String email,
            Language speaks,
            Kind kind,
            Optional<java.time.LocalDate> lastDay,
            Optional<Member> consentBy,
            Optional<java.time.LocalDate> consentOn) {
        var missing = new java.util.ArrayList<Problem>();
        lastDay.ifPresentOrElse(d -> {}, () -> missing.add(Problem.at("lastDay", "access.helpers.no-day")));
        consentBy.ifPresentOrElse(d -> {}, () -> missing.add(Problem.at("consentBy", "access.helpers.no-consent")));
        consentOn.ifPresentOrElse(d -> {}, () -> missing.add(Problem.at("consentOn", "access.helpers.no-day")));
        Invalid.ifAny(missing);
        var help = new Help(
                kind, lastDay.orElseThrow(), new Consent(consentBy.orElseThrow().account(), consentOn.orElseThrow()));
        var invitation = parts.circle().askToHelp(viewer, child, new NewHelper(name, email, speaks, help));
        link.removeAll();
        invitation.ifPresentOrElse(
                made -> link.add(LinkSheet.of(made, name, viewer, parts.words())),
                () -> Told.done(say("access.helpers.known", name)));
        draw();
    }

    private String say(String key, Object... args) {
        return parts.words().say(language, key, args);
    }
}
