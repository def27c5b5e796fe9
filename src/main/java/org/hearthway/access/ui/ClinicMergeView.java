package org.hearthway.access.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.access.SignedIn;
import org.hearthway.base.AccountId;
import org.hearthway.base.ChildId;
import org.hearthway.base.Invalid;
import org.hearthway.base.NotAvailable;
import org.hearthway.child.Child;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Households.Reach;
import org.hearthway.child.Merges;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.words.Words;

/** Putting two entries of one child together: what would happen, then the reason; and taking it back. */
@Route("staff/clinic/child/:child/merge")
@RolesAllowed("ADMINISTRATOR")
class ClinicMergeView extends ClinicPage implements BeforeEnterObserver {

    private static final String OTHER = "other";

    private final transient ChildRegister children;
    private final transient Merges merges;
    private final transient Accounts accounts;
    private final transient ClinicSettings clinic;

    ClinicMergeView(
            ChildRegister children,
            Merges merges,
            Accounts accounts,
            ClinicSettings clinic,
            Words words,
            SignedIn signedIn) {
        super("children", words, signedIn);
        this.children = children;
        this.merges = merges;
        this.accounts = accounts;
        this.clinic = clinic;
        addClassName("hw-clinic-merge");
    }

    @Override
    KeyBar keys() {
        return new KeyBar();
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var id = event.getRouteParameters().get("child").flatMap(ChildId::parse).orElseThrow(NotAvailable::new);
        var child = children.get(viewer(), id);
        var other = event.getLocation()
                .getQueryParameters()
                .getSingleParameter(OTHER)
                .flatMap(ChildId::parse);
        main.removeAll();
        side.removeAll();
        main.add(
                Tags.div("hw-colh", Tags.h2("", say("access.merge.title", child.fullName()))),
                Tags.p("hw-quiet", say("access.merge.says")),
                choose(child, other));
        other.ifPresent(chosen -> preview(merges.preview(viewer(), id, chosen)));
        standing(id);
        side.add(Tags.link("hw-button text", "staff/clinic/children?child=" + id, say("access.merge.back")));
    }

    private ComboBox<Child> choose(Child child, Optional<ChildId> other) {
        var alike = children.alike(viewer(), child.data()).stream()
                .map(each -> each.child().id())
                .collect(Collectors.toSet());
        var all = children.all(viewer()).stream()
                .filter(each -> !each.id().equals(child.id()))
                .sorted(java.util.Comparator.comparing(each -> !alike.contains(each.id())))
                .toList();
        var choice = new ComboBox<Child>(say("access.merge.other"));
        choice.setId("merge-other");
        choice.setItems(all);
        choice.setItemLabelGenerator(each -> say(
                alike.contains(each.id()) ? "access.merge.other.alike" : "access.merge.other.item",
                each.fullName(),
                words.dateWithYear(language, each.data().birthDate())));
        choice.setWidthFull();
        other.ifPresent(id ->
                all.stream().filter(each -> each.id().equals(id)).findFirst().ifPresent(choice::setValue));
        choice.addValueChangeListener(
                change -> Optional.ofNullable(change.getValue()).ifPresent(value -> open(child.id(), value.id())));
        return choice;
    }

    private static void open(ChildId child, ChildId other) {
        UI.getCurrent().navigate("staff/clinic/child/" + child + "/merge", QueryParameters.of(OTHER, other.toString()));
    }

    private void preview(Merges.Preview preview) {
        var swap = Tags.button(
                "plain",
                say("access.merge.swap"),
                pressed -> open(preview.folds().id(), preview.stays().id()));
        swap.setId("merge-swap");
        main.add(
                Tags.div(
                        "hw-merge-pair",
                        entry("access.merge.stays", preview.stays()),
                        entry("access.merge.folds", preview.folds())),
                Tags.div("hw-merge-swap", swap));
        hindrances(preview);
        main.add(parts(preview), caregivers(preview));
        if (preview.hindrances().isEmpty()) {
            side.add(confirm(preview));
        }
    }

    private Div entry(String key, Child child) {
        return Tags.div(
                "hw-sheet",
                Tags.span("hw-label", say(key)),
                Tags.div("hw-colh", Tags.h2("", child.fullName())),
                Tags.p(
                        "hw-quiet",
                        say(
                                "access.merge.entry",
                                words.dateWithYear(language, child.data().birthDate()),
                                child.gmfcs().map(String::valueOf).orElse(say("access.child.not-recorded")))));
    }

    private void hindrances(Merges.Preview preview) {
        if (preview.hindrances().isEmpty()) {
            return;
        }
        var why = Tags.div("", Tags.p("", say("access.merge.hindered")));
        preview.hindrances().forEach(problem -> why.add(Tags.p("", words.say(language, problem))));
        var banner = Tags.div("hw-banner warn", why);
        banner.getElement().setAttribute("role", "alert");
        main.add(banner);
    }

    private Div parts(Merges.Preview preview) {
        if (preview.parts().isEmpty()) {
            return Tags.div("", Tags.p("hw-quiet", say("access.merge.nothing")));
        }
        var table = table(say("access.merge.parts"), "access.merge.column.", "what", "moves", "stays-behind");
        for (var part : preview.parts()) {
            table.getBody()
                    .add(new NativeTableRow(
                            cell(say("access.merge.part." + part.name())),
                            cell(count(part.moves())),
                            cell(count(part.staysBehind()))));
        }
        return Tags.div("", table, Tags.p("hw-quiet", say("access.merge.stays-behind")));
    }

    private String count(long number) {
        return say("access.merge.count", number);
    }

    private Div caregivers(Merges.Preview preview) {
        var people =
                people(preview.caregivers().stream().map(Merges.Both::account).collect(Collectors.toSet()));
        var list = Tags.div("hw-merge-people", Tags.div("hw-colh", Tags.h2("", say("access.merge.people"))));
        preview.caregivers()
                .forEach(both -> list.add(Tags.p(
                        "",
                        say(
                                "access.merge.person",
                                name(people, both.account()),
                                reach(both.inTheOneThatStays()),
                                reach(both.inTheOneThatFolds())))));
        if (preview.caregivers().isEmpty()) {
            list.add(Tags.p("hw-quiet", say("access.caregivers.none")));
        }
        return list;
    }

    private String reach(Optional<Reach> reach) {
        return reach.map(each -> say("access.reach." + each.name())).orElse(say("access.merge.no-reach"));
    }

    private Map<AccountId, Account> people(java.util.Set<AccountId> ids) {
        return accounts.byId(viewer(), ids);
    }

    private static String name(Map<AccountId, Account> people, AccountId id) {
        return Optional.ofNullable(people.get(id)).map(Account::name).orElse("");
    }

    private Div confirm(Merges.Preview preview) {
        var reason = reason();
        var merge = Tags.button(
                "main wide",
                say("access.merge.do"),
                pressed -> decide(reason, () -> {
                    merges.merge(viewer(), preview.stays().id(), preview, reason.getValue());
                    Told.done(say("access.merge.done", preview.stays().fullName()));
                    UI.getCurrent()
                            .navigate("staff/clinic/child/" + preview.stays().id() + "/merge");
                }));
        merge.setId("merge-do");
        return Tags.div(
                "hw-sheet hw-side-form",
                Tags.h2("", say("access.merge.confirm")),
                Tags.p("hw-quiet", say("access.merge.confirm.says")),
                reason,
                merge);
    }

    private TextArea reason() {
        var reason = new TextArea(say("access.merge.reason"));
        reason.setManualValidation(true);
        reason.setWidthFull();
        return reason;
    }

    /** What was typed stays when it is refused. */
    private void decide(TextArea reason, Runnable work) {
        try {
            attempt(work);
        } catch (Invalid invalid) {
            Told.problems(invalid.problems(), Map.of("reason", reason), words, language);
        }
    }

    private void standing(ChildId child) {
        List<Merges.Merged> of = merges.standing(viewer()).stream()
                .filter(merged -> merged.stays().equals(child))
                .toList();
        var people = people(of.stream().map(Merges.Merged::by).collect(Collectors.toSet()));
        for (var merged : of) {
            var reason = reason();
            var takeBack = Tags.button(
                    "plain wide",
                    say("access.merge.take-back"),
                    pressed -> decide(reason, () -> {
                        merges.takeBack(viewer(), child, merged.id(), reason.getValue());
                        Told.done(say("access.merge.taken-back", merged.folded().fullName()));
                        UI.getCurrent()
                                .navigate("staff/clinic/children", QueryParameters.of("child", child.toString()));
                    }));
            takeBack.setId("merge-take-back");
            side.add(Tags.div(
                    "hw-sheet hw-side-form",
                    Tags.h2("", say("access.merge.standing", merged.folded().fullName())),
                    Tags.p(
                            "hw-quiet",
                            say(
                                    "access.merge.standing.says",
                                    words.dateWithYear(
                                            language, java.time.LocalDate.ofInstant(merged.at(), clinic.zone())),
                                    name(people, merged.by()),
                                    merged.reason())),
                    reason,
                    takeBack));
        }
    }
}
