package org.hearthway.access.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.EmailField;
import com.vaadin.flow.component.textfield.TextField;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.hearthway.access.NewAccount;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.Role;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.words.Words;

/** The form that invites a person. What was typed stays when it is refused. */
final class InviteForm {

    private final Words words;
    private final Language language;
    private final ZoneId zone;

    InviteForm(Words words, Language language, ZoneId zone) {
        this.words = words;
        this.language = language;
        this.zone = zone;
    }

    /**
     * Draws it.
     *
     * @param invites takes the account, or refuses with {@link Invalid}
     */
    Div draw(Consumer<NewAccount> invites) {
        var name = new TextField(say("access.form.name"));
        name.setId("invite-name");
        var email = new EmailField(say("access.form.email"));
        // the service says what is wrong, in our words
        email.setManualValidation(true);
        email.setId("invite-email");
        var phone = new TextField(say("access.form.phone"));
        var roles = new CheckboxGroup<Role>(say("access.form.roles"));
        roles.setItems(Role.values());
        roles.setItemLabelGenerator(role -> say("access.role." + role.name()));
        roles.setId("invite-roles");
        var speaks = new Select<Language>();
        speaks.setLabel(say("access.form.language"));
        speaks.setItems(Language.values());
        speaks.setItemLabelGenerator(each -> say("access.language." + each.name()));
        speaks.setValue(Language.EN);
        var clock = new ComboBox<String>(say("access.form.zone"));
        clock.setItems(ZoneId.getAvailableZoneIds().stream().sorted().toList());
        clock.setValue(zone.getId());
        clock.setHelperText(say("access.form.zone.note"));
        Map<String, HasValidation> fields = Map.of("name", name, "email", email, "phone", phone, "roles", roles);
        var invite = Tags.button("main wide", say("access.form.invite"), pressed -> {
            try {
                invites.accept(new NewAccount(
                        name.getValue(),
                        email.getValue(),
                        phone.getValue(),
                        roles.getValue(),
                        speaks.getValue(),
                        clock.getValue() == null ? zone : ZoneId.of(clock.getValue())));
            } catch (Invalid invalid) {
                Told.problems(invalid.problems(), fields, words, language);
            }
        });
        invite.setId("invite");
        return Tags.div(
                "hw-sheet hw-side-form",
                Tags.h2("", say("access.form.title")),
                name,
                email,
                phone,
                roles,
                Tags.div("hw-pair", List.of(speaks, clock).toArray(com.vaadin.flow.component.Component[]::new)),
                invite);
    }

    private String say(String key, Object... args) {
        return words.say(language, key, args);
    }
}
