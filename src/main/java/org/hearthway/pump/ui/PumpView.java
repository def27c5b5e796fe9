package org.hearthway.pump.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
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
import org.hearthway.parts.Icon;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.pump.PumpSettings;
import org.hearthway.pump.PumpSettings.SettingData;
import org.hearthway.pump.Pumps;
import org.hearthway.pump.Pumps.Fill;
import org.hearthway.pump.Pumps.FillData;
import org.hearthway.pump.engine.RefillBy;
import org.hearthway.words.Words;

/** A child's pump in the folder: the day to refill by with its arithmetic, the form for a fill, every fill before. */
@Route("staff/child/:child/pump")
@RolesAllowed({"THERAPIST", "PHYSICIAN", "NURSE", "COORDINATOR"})
class PumpView extends Div implements BeforeEnterObserver, HasDynamicTitle, FillForm.Acts, SettingForm.Acts {

    private final transient Pumps pumps;
    private final transient PumpSettings pumpSettings;
    private final transient Accounts accounts;
    private final transient Gate gate;
    private final transient Words words;
    private final transient PumpWords say;
    private final transient ClinicSettings settings;
    private final transient Clock clock;
    private final transient Viewer.Person viewer;
    private final Div state = new Div();
    private final Div beside = new Div();
    private final Div settingPlace = new Div();
    private transient ChildId child = new ChildId(new UUID(0, 0));
    private long seen;
    private long seenSetting;

    PumpView(
            Pumps pumps,
            PumpSettings pumpSettings,
            Accounts accounts,
            Gate gate,
            Words words,
            ClinicSettings settings,
            Clock clock,
            SignedIn signedIn) {
        this.pumps = pumps;
        this.pumpSettings = pumpSettings;
        this.accounts = accounts;
        this.gate = gate;
        this.words = words;
        this.settings = settings;
        this.clock = clock;
        this.viewer = signedIn.require();
        this.say = new PumpWords(words, viewer.language());
        addClassName("hw-worksheet");
        var keys = new KeyBar()
                .tell(say.say("pump.keys.record"), say.say("parts.key.ctrl"), say.say("parts.key.enter"))
                .remark(say.say("pump.keys.written-down"));
        add(Tags.div("hw-desk", Tags.div("hw-cols u-side24", state, Tags.div("hw-stack", beside, settingPlace))), keys);
    }

    @Override
    public String getPageTitle() {
        return say.say("pump.page");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        child = event.getRouteParameters().get("child").flatMap(ChildId::parse).orElseThrow(NotAvailable::new);
        gate.require(viewer, Action.SEE_FOLDER, child);
        drawState();
        drawForm();
        drawSetting();
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), settings.zone());
    }

    private void drawState() {
        state.removeAll();
        var fills = pumps.history(viewer, child);
        seen = fills.isEmpty() ? 0 : fills.get(0).number();
        var current = pumps.current(viewer, child);
        current.ifPresentOrElse(fill -> drawCurrent(fill.refillBy()), () -> state.add(withoutDay(!fills.isEmpty())));
        if (!fills.isEmpty()) {
            state.add(history(fills, current.isPresent()));
        }
    }

    /** Why no day to refill by is told: none of an earlier pump's stands for the one that is in. */
    private Component withoutDay(boolean another) {
        var out = pumps.takenOutOn(viewer, child);
        var unfilled = pumps.unfilledSince(viewer, child);
        if (out.isPresent()) {
            return without(say.say("pump.out"), say.say("pump.out.since", say.date(out.get())), "pump.out.hint", true);
        }
        if (unfilled.isPresent()) {
            var since = say.date(unfilled.get());
            return without(
                    say.say("pump.unfilled"),
                    say.say(another ? "pump.unfilled.new" : "pump.unfilled.since", since),
                    "pump.unfilled.hint",
                    true);
        }
        return without(say.say("pump.none"), "", "pump.none.hint", false);
    }

    private Component without(String title, String says, String hint, boolean devices) {
        var part = Tags.div("", Tags.div("hw-colh", Tags.h2("", title)));
        if (!says.isEmpty()) {
            part.add(Tags.div("hw-banner u-my2", Icon.REFILL.draw(), Tags.div("", new Span(says))));
        }
        part.add(Tags.p("hw-quiet", say.say(hint)));
        if (devices) {
            part.add(Tags.link("", "staff/child/" + child + "/device", say.say("pump.to-devices")));
        }
        return part;
    }

    private void drawCurrent(RefillBy by) {
        var today = today();
        state.add(
                Tags.div("hw-colh", Tags.h2("", say.say("pump.now"))),
                Tags.div(
                        "hw-refill",
                        Tags.span("day", say.full(by.day())),
                        Tags.span(
                                "hw-label " + (by.day().isAfter(today) ? "line" : "ember"),
                                say.distance(by.day(), today))));
        if (!by.day().isAfter(today)) {
            var says = Tags.div("", new Span(say.say("pump.overdue")));
            state.add(Tags.div("hw-banner u-my2", Icon.REFILL.draw(), says));
        }
        var line = new RefillLine(say).draw(by, today);
        line.addClassName("narrow");
        state.add(scroll(say.say("pump.line"), line), say.sums(by));
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

    private Component history(List<Fill> fills, boolean firstCounts) {
        var people = fills.stream().map(Fill::by).collect(Collectors.toSet());
        return new FillHistory(say, fills, firstCounts, accounts.byId(viewer, people));
    }

    private void drawForm() {
        beside.removeAll();
        if (!gate.allows(viewer, Action.RECORD_PUMP, child)) {
            beside.add(Tags.p("hw-quiet", say.say("pump.read-only")));
        } else if (pumps.takenOutOn(viewer, child).isEmpty()) {
            beside.add(new FillForm(say, words, pumps.rules(), today(), this));
        }
    }

    @Override
    public RefillBy check(FillData data) {
        return pumps.check(data);
    }

    @Override
    public void save(FillData data) {
        try {
            pumps.record(viewer, child, data, seen);
            Told.done(say.say("pump.saved"));
            drawForm();
        } catch (Overtaken overtaken) {
            // the form keeps what was typed; the fill that came in between is drawn beside it
            Told.couldNot(say.say("pump.overtaken"));
        }
        drawState();
    }

    private void drawSetting() {
        var current = pumpSettings.current(viewer, child);
        seenSetting = current.map(PumpSettings.Setting::number).orElse(0L);
        var own =
                current.filter(setting -> setting.by().equals(viewer.account())).isPresent();
        settingPlace.removeAll();
        if (pumps.takenOutOn(viewer, child).isPresent()) {
            return;
        }
        settingPlace.add(new SettingForm(
                say,
                words,
                pumpSettings.ofThisPump(viewer, child),
                gate.allows(viewer, Action.RECORD_PUMP, child),
                own,
                this));
    }

    @Override
    public void enter(SettingData data) {
        settle(() -> pumpSettings.enter(viewer, child, data, seenSetting), "pump.setting.saved");
    }

    @Override
    public void confirm(SettingData again) {
        settle(() -> pumpSettings.confirm(viewer, child, again, seenSetting), "pump.setting.done");
    }

    private void settle(Runnable act, String told) {
        try {
            act.run();
            Told.done(say.say(told));
        } catch (Overtaken overtaken) {
            Told.couldNot(say.say("pump.setting.overtaken"));
        }
        drawSetting();
    }

    @Override
    public String name(AccountId account) {
        return Optional.ofNullable(accounts.byId(viewer, Set.of(account)).get(account))
                .map(Account::name)
                .orElse("");
    }
}
