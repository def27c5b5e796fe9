package org.hearthway.family;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.EmailField;
import com.vaadin.flow.component.textfield.TextField;
import java.util.Map;
import org.hearthway.access.Accounts;
import org.hearthway.access.Circle;
import org.hearthway.access.Circle.NewHelper;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Problem;
import org.hearthway.child.Helpers.Consent;
import org.hearthway.child.Helpers.Help;
import org.hearthway.child.Helpers.Kind;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;

/** A caregiver lets somebody help: who, what for and until when. Pressing the button is the consent, and says so. */
class HelpForm extends Div {

    private final transient Reader reader;
    private final transient Circle circle;
    private final transient Runnable changed;
    private final Div link = Tags.div("");

    HelpForm(Reader reader, Circle circle, Runnable changed) {
        this.reader = reader;
        this.circle = circle;
        this.changed = changed;
        addClassName("u-mt3");
        draw();
    }

    private void draw() {
        var name = new TextField(reader.say("family.help.who"));
        name.setWidthFull();
        name.setId("help-name");
        var email = new EmailField(reader.say("family.help.email"));
        email.setManualValidation(true);
        email.setWidthFull();
        email.setId("help-email");
        var kind = new Select<Kind>();
        kind.setLabel(reader.say("family.help.what-for"));
        kind.setItems(Kind.values());
        kind.setItemLabelGenerator(each -> reader.say("family.help.kind." + each));
        kind.setValue(Kind.SCHOOL_AIDE);
        kind.setWidthFull();
        var speaks = new Select<Language>();
        speaks.setLabel(reader.say("family.help.language"));
        speaks.setItems(Language.values());
        speaks.setItemLabelGenerator(each -> reader.say("family.help.language." + each));
        speaks.setValue(reader.language());
        speaks.setWidthFull();
        var lastDay = new DayField(reader.say("family.help.last-day"), reader.words(), reader.language());
        lastDay.setWidthFull();
        lastDay.setId("help-last-day");
        Map<String, HasValidation> fields = Map.of("name", name, "email", email, "lastDay", lastDay);
        var ask = Tags.button("main wide", reader.say("family.help.yes"), pressed -> {
            try {
                if (lastDay.getValue() == null) {
                    throw new Invalid(Problem.at("lastDay", "family.help.no-day"));
                }
                var help = new Help(
                        kind.getValue(),
                        lastDay.getValue(),
                        new Consent(reader.viewer().account(), clinicDay()));
                circle.askToHelp(
                                reader.viewer(),
                                reader.id(),
                                new NewHelper(name.getValue(), email.getValue(), speaks.getValue(), help))
                        .ifPresentOrElse(made -> show(made, name.getValue()), () -> {
                            Told.done(reader.say("family.help.known", name.getValue()));
                            changed.run();
                        });
            } catch (Invalid invalid) {
                Told.problems(invalid.problems(), fields, reader.words(), reader.language());
            } catch (Overtaken overtaken) {
                Told.couldNot(reader.say("family.help.overtaken"));
            }
        });
        ask.setId("help-ask");
        var form = new NativeDetails(reader.say("family.help.new"));
        form.addClassName("hw-unfold");
        form.setContent(Tags.div(
                "hw-stack u-gap2",
                name,
                email,
                kind,
                speaks,
                lastDay,
                Tags.p("hw-s hw-quiet", reader.say("family.help.consent-is", reader.name())),
                ask));
        add(link, form);
    }

    private java.time.LocalDate clinicDay() {
        return reader.today();
    }

    /** The link is shown this once, to be handed on by the person who asked. */
    private void show(Accounts.Invitation made, String name) {
        removeAll();
        var url = new TextField(reader.say("family.help.link", name));
        url.setValue(made.url());
        url.setReadOnly(true);
        url.setAutoselect(true);
        url.setWidthFull();
        link.removeAll();
        link.addClassNames("hw-sheet", "hw-told");
        link.getElement().setAttribute("role", "status");
        link.add(
                url,
                Tags.p("hw-s", reader.say("family.help.link.hand-on", name)),
                Tags.button("plain wide", reader.say("family.help.link.done"), pressed -> changed.run()));
        add(link);
    }
}
