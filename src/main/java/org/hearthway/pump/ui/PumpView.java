package org.hearthway.pump.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.hearthway.access.Account;
import org.hearthway.access.Accounts;
import org.hearthway.access.SignedIn;
import org.hearthway.base.AccountId;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.pump.PumpBook;
import org.hearthway.pump.PumpKinds;
import org.hearthway.pump.Pumps.Concern;
import org.hearthway.words.Words;

/** A child's pump in the folder: how it stands and what follows, its forms, its book. */
@Route("staff/child/:child/pump")
@RolesAllowed({"THERAPIST", "PHYSICIAN", "NURSE", "COORDINATOR"})
class PumpView extends Div implements BeforeEnterObserver, HasDynamicTitle, PumpForms.Page {

    private final transient PumpBook book;
    private final transient PumpKinds kinds;
    private final transient PumpReader reader;
    private final transient Accounts accounts;
    private final transient Gate gate;
    private final transient Words words;
    private final transient PumpWords say;
    private final transient PumpFigures figures;
    private final transient ClinicSettings clinic;
    private final transient Clock clock;
    private final transient Viewer.Person viewer;
    private final Div acts = new Div();
    private final Div stopped = new Div();
    private final Div page = new Div();
    private final Div beside = new Div();
    private final Div cols = Tags.div("hw-pumpcols", page, beside);
    private KeyBar keys = new KeyBar();
    private transient ChildId child = new ChildId(new UUID(0, 0));

    PumpView(
            PumpBook book,
            PumpKinds kinds,
            PumpReader reader,
            Accounts accounts,
            Gate gate,
            Words words,
            ClinicSettings clinic,
            Clock clock,
            SignedIn signedIn) {
        this.book = book;
        this.kinds = kinds;
        this.reader = reader;
        this.accounts = accounts;
        this.gate = gate;
        this.words = words;
        this.clinic = clinic;
        this.clock = clock;
        this.viewer = signedIn.require();
        this.say = new PumpWords(words, viewer.language());
        this.figures = new PumpFigures(say, clinic.zone());
        addClassName("hw-worksheet");
        add(Tags.div("hw-desk", acts, stopped, cols), keys);
    }

    /** A box that scrolls by itself on a phone, by touch or by keys. */
    static Div scroll(String label, Component content) {
        var box = Tags.div("hw-scroll", content);
        box.getElement()
                .setAttribute("role", "region")
                .setAttribute("tabindex", "0")
                .setAttribute("aria-label", label);
        return box;
    }

    @Override
    public String getPageTitle() {
        return say.say("pump.page");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        child = event.getRouteParameters().get("child").flatMap(ChildId::parse).orElseThrow(NotAvailable::new);
        gate.require(viewer, Action.SEE_FOLDER, child);
        stopped.removeAll();
        close();
        changed();
    }

    @Override
    public void changed() {
        var reading = reader.read(viewer, child);
        acts.removeAll();
        acts.add(new ActsBar(say, reading, forms(), this::openStopped));
        var now = ActsBar.keys(say, reading);
        replace(keys, now);
        keys = now;
        page.removeAll();
        page.add(new PumpPage(figures, words, reading, forms(), this::explain));
    }

    private PumpForms forms() {
        var formSay = new FormSay(words, say, figures, book.rules(), clinic.zone());
        return new PumpForms(book, kinds, formSay, viewer, child, clock, this);
    }

    private void openStopped() {
        stopped.removeAll();
        var panel = new StoppedPanel(figures, reader.read(viewer, child), clinic, stopped::removeAll);
        stopped.add(panel);
        panel.scrollIntoView();
        panel.getElement().callJsFunction("focus");
    }

    private void explain(String typed) {
        try {
            var apart = reader.read(viewer, child).concerns().stream()
                    .filter(concern -> concern.kind() == Concern.Kind.PRINT_OUT)
                    .findFirst()
                    .orElseThrow(Overtaken::new);
            book.explain(viewer, child, apart.entry(), typed);
            Told.done(say.say("pump.state.apart.kept"));
        } catch (Overtaken overtaken) {
            Told.couldNot(say.say("pump.state.apart.overtaken"));
        }
        changed();
    }

    @Override
    public void open(Component form) {
        beside.removeAll();
        beside.add(form);
        cols.addClassName("open");
        form.scrollIntoView();
    }

    @Override
    public void close() {
        beside.removeAll();
        cols.removeClassName("open");
    }

    @Override
    public String name(AccountId account) {
        return Optional.ofNullable(accounts.byId(viewer, Set.of(account)).get(account))
                .map(Account::name)
                .orElse("");
    }
}
