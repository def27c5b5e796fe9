package org.hearthway.access.ui;

import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import java.util.stream.Collectors;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Role;
import org.hearthway.base.Viewer;
import org.hearthway.child.Households;
import org.hearthway.child.Households.Reach;
import org.hearthway.parts.Tags;
import org.hearthway.words.Words;

/** Who cares for a child and how far that reaches; adding, changing and ending it. */
final class CaregiversSheet {

    private final Households households;
    private final Accounts accounts;
    private final Words words;
    private final ChildId child;
    private final Runnable changed;

    CaregiversSheet(Households households, Accounts accounts, Words words, ChildId child, Runnable changed) {
        this.households = households;
        this.accounts = accounts;
        this.words = words;
        this.child = child;
        this.changed = changed;
    }

    Div draw(Viewer.Person viewer) {
        var known = accounts.all(viewer).stream().collect(Collectors.toMap(Account::id, a -> a));
        var linked = households.caregivers(viewer, child);
        var sheet = Tags.div("hw-sheet hw-side-form", Tags.h2("", say(viewer, "access.caregivers")));
        for (var each : linked) {
            var account = known.get(each.account());
            if (account != null) {
                sheet.add(line(viewer, account, each.reach()));
            }
        }
        if (linked.isEmpty()) {
            sheet.add(Tags.p("hw-quiet", say(viewer, "access.caregivers.none")));
        }
        var ids = linked.stream().map(Households.Caregiver::account).collect(Collectors.toSet());
        var others = known.values().stream()
                .filter(a -> a.roles().contains(Role.CAREGIVER) && !ids.contains(a.id()))
                .sorted(java.util.Comparator.comparing(Account::name))
                .toList();
        var who = new ComboBox<Account>(say(viewer, "access.caregivers.who"));
        who.setItems(others);
        who.setItemLabelGenerator(a -> a.name() + " · " + a.email());
        who.setId("caregiver-who");
        who.setHelperText(say(viewer, "access.caregivers.who.note"));
        var reach = reach(viewer, Reach.FULL);
        var add = Tags.button("plain wide", say(viewer, "access.caregivers.add"), pressed -> {
            if (who.getValue() == null) {
                who.setErrorMessage(say(viewer, "access.caregivers.choose"));
                who.setInvalid(true);
            } else {
                link(viewer, who.getValue().id(), reach.getValue());
            }
        });
        add.setId("caregiver-add");
        sheet.add(who, reach, add);
        return sheet;
    }

    private Div line(Viewer.Person viewer, Account account, Reach now) {
        var reach = reach(viewer, now);
        reach.setLabel(account.name());
        reach.addValueChangeListener(change -> link(viewer, account.id(), change.getValue()));
        var end = Tags.button("text hw-word", say(viewer, "access.caregivers.end"), pressed -> {
            households.unlink(viewer, child, account.id());
            changed.run();
        });
        end.getElement().setAttribute("aria-label", say(viewer, "access.caregivers.end") + ": " + account.name());
        return Tags.div("hw-caregiver", reach, end);
    }

    private void link(Viewer.Person viewer, AccountId account, Reach reach) {
        households.link(viewer, child, account, reach);
        changed.run();
    }

    private Select<Reach> reach(Viewer.Person viewer, Reach now) {
        var reach = new Select<Reach>();
        reach.setLabel(say(viewer, "access.caregivers.reach"));
        reach.setItems(Reach.values());
        reach.setItemLabelGenerator(each -> say(viewer, "access.reach." + each.name()));
        reach.setValue(now);
        return reach;
    }

    private String say(Viewer.Person viewer, String key) {
        return words.say(viewer.language(), key);
    }
}
