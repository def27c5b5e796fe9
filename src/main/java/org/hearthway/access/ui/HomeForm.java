package org.hearthway.access.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import java.time.DayOfWeek;
import java.util.Map;
import java.util.Optional;
import org.hearthway.access.Circle.Member;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.Language;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.child.Homes;
import org.hearthway.child.Homes.Authority;
import org.hearthway.child.Homes.Home;
import org.hearthway.child.engine.Nights;
import org.hearthway.parts.DayField;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;

/** What is entered about one caregiver's home. What was typed stays when it is refused or somebody else was first. */
final class HomeForm extends Div {

    private final transient HomesPanel.Parts parts;
    private final transient Viewer.Person viewer;
    private final transient ChildId child;
    private final transient Member member;
    private final Language language;
    private final TextField relation;
    private final Select<Authority> authority = new Select<>();
    private final TextArea address;
    private final TextField interpreter;
    private final CheckboxGroup<DayOfWeek> nights;
    private final CheckboxGroup<DayOfWeek> otherNights;
    private final DayField turns;
    private final Checkbox shares;
    private final Checkbox apart;
    private final TextArea note;
    private long seen;

    HomeForm(HomesPanel.Parts parts, Viewer.Person viewer, ChildId child, Member member, Runnable done) {
        this.parts = parts;
        this.viewer = viewer;
        this.child = child;
        this.member = member;
        this.language = viewer.language();
        addClassNames("hw-side-form", "hw-home-form");
        relation = new TextField(say("access.homes.relation"));
        relation.setHelperText(say("access.homes.relation.note"));
        relation.setId("home-relation");
        authority.setLabel(say("access.homes.authority"));
        authority.setItems(Authority.values());
        authority.setItemLabelGenerator(each -> say("access.homes.authority.choice." + each.name()));
        authority.setId("home-authority");
        address = new TextArea(say("access.homes.address"));
        address.setId("home-address");
        interpreter = new TextField(say("access.homes.interpreter"));
        interpreter.setHelperText(say("access.homes.interpreter.note"));
        nights = weekdays("access.homes.nights");
        nights.setId("home-nights");
        otherNights = weekdays("access.homes.nights.other");
        turns = new DayField(say("access.homes.nights.from"), parts.words(), language);
        turns.setId("home-turns");
        shares = new Checkbox(say("access.homes.shares.choice"));
        apart = new Checkbox(say("access.homes.apart.choice"));
        apart.setId("home-apart");
        note = new TextArea(say("access.homes.note"));
        note.setHelperText(say("access.homes.note.help"));
        note.setId("home-note");
        fill();
        var save = Tags.button("main", say("access.homes.save"), pressed -> save(done));
        save.setId("home-save");
        add(
                Tags.h2("", member.name()),
                Tags.p("hw-sub", say("access.homes.account")),
                Tags.div("two", relation, authority),
                address,
                interpreter,
                nights,
                Tags.div("two", turns, Tags.p("hw-sub", say("access.homes.nights.note"))),
                otherNights,
                shares,
                apart,
                note,
                Tags.div("u-row1", save, Tags.button("plain", say("access.homes.cancel"), pressed -> done.run())));
        otherNights.setVisible(turns.getValue() != null);
        turns.addValueChangeListener(change -> otherNights.setVisible(change.getValue() != null));
    }

    private CheckboxGroup<DayOfWeek> weekdays(String key) {
        var group = new CheckboxGroup<DayOfWeek>(say(key));
        var names = new NightWords(parts.words(), language);
        group.setItems(DayOfWeek.values());
        group.setItemLabelGenerator(names::name);
        group.addClassName("hw-weekdays");
        return group;
    }

    private void fill() {
        seen = member.home().map(Homes.Entered::number).orElse(0L);
        var home = member.home().map(Homes.Entered::home).orElse(Home.UNKNOWN);
        relation.setValue(home.relation());
        authority.setValue(home.authority());
        address.setValue(home.address());
        interpreter.setValue(home.interpreter());
        nights.setValue(home.nights().week());
        otherNights.setValue(home.nights().otherWeek());
        turns.setValue(home.nights().turns().orElse(null));
        shares.setValue(home.sharesPhone());
        apart.setValue(home.keptApart());
        note.setValue(home.note());
    }

    private Home home() {
        var from = Optional.ofNullable(turns.getValue());
        return new Home(
                relation.getValue(),
                authority.getValue(),
                address.getValue(),
                interpreter.getValue(),
                new Nights(nights.getValue(), from.isPresent() ? otherNights.getValue() : java.util.Set.of(), from),
                shares.getValue(),
                apart.getValue(),
                note.getValue());
    }

    private void save(Runnable done) {
        Map<String, HasValidation> fields = Map.of(
                "relation", relation, "address", address, "interpreter", interpreter, "note", note, "turns", turns);
        try {
            parts.homes().enter(viewer, child, member.account(), home(), seen);
            Told.done(say("access.homes.saved"));
            done.run();
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), fields, parts.words(), language);
        } catch (Overtaken overtaken) {
            seen = Optional.ofNullable(parts.homes().of(viewer, child).get(member.account()))
                    .map(Homes.Entered::number)
                    .orElse(0L);
            Told.couldNot(say("access.homes.overtaken"));
        }
    }

    private String say(String key, Object... args) {
        return parts.words().say(language, key, args);
    }
}
