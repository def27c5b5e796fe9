package org.hearthway.equipment.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.hearthway.access.SignedIn;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Overtaken;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.equipment.CastSeries;
import org.hearthway.equipment.Casts;
import org.hearthway.equipment.Equipment;
import org.hearthway.equipment.Item;
import org.hearthway.equipment.Kind.Sort;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Tags;
import org.hearthway.parts.Told;
import org.hearthway.words.Words;

/** What a child wears and uses: casts, splints, equipment, each with the day on which it is looked at next. */
@Route("staff/child/:child/equipment")
@RolesAllowed({"THERAPIST", "PHYSICIAN", "NURSE", "COORDINATOR"})
class EquipmentView extends Div implements BeforeEnterObserver, HasDynamicTitle, ThingCard.Acts {

    private final transient Equipment equipment;
    private final transient Casts casts;
    private final transient Gate gate;
    private final transient ClinicSettings clinic;
    private final transient Clock clock;
    private final transient Labels labels;
    private final Viewer.Person viewer;
    private final Div list = Tags.div("hw-devices");
    private final Div beside = new Div();
    private transient ChildId child = new ChildId(new UUID(0, 0));
    private boolean may;

    EquipmentView(
            Equipment equipment,
            Casts casts,
            Gate gate,
            Words words,
            ClinicSettings clinic,
            Clock clock,
            SignedIn signedIn) {
        this.equipment = equipment;
        this.casts = casts;
        this.gate = gate;
        this.clinic = clinic;
        this.clock = clock;
        this.viewer = signedIn.require();
        this.labels = new Labels(words, viewer.language());
        addClassName("hw-worksheet");
        add(
                Tags.div("hw-desk", Tags.div("hw-cols u-side24", list, beside)),
                new KeyBar().remark(say("equipment.written-down")));
    }

    @Override
    public String getPageTitle() {
        return say("equipment.title");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        child = event.getRouteParameters().get("child").flatMap(ChildId::parse).orElseThrow(NotAvailable::new);
        gate.require(viewer, Action.SEE_FOLDER, child);
        may = gate.allows(viewer, Action.RECORD_EQUIPMENT, child);
        leave();
    }

    private void draw() {
        list.removeAll();
        var card = new ThingCard(labels, today(), may, this);
        var series = casts.of(viewer, child);
        var items = equipment.of(viewer, child);
        section("equipment.casts", series.stream().map(card::cast).toList(), "cast-add", this::newSeries);
        for (var sort : new Sort[] {Sort.WORN, Sort.USED}) {
            section(
                    "equipment.sort." + sort,
                    items.stream()
                            .filter(item -> item.kind().sort() == sort)
                            .map(card::item)
                            .toList(),
                    "add-" + sort,
                    () -> edit(Optional.empty(), sort));
        }
    }

    private void section(String title, List<Component> cards, String id, Runnable adds) {
        list.add(Tags.div("hw-colh", Tags.h2("", say(title))));
        if (cards.isEmpty()) {
            list.add(Tags.p("hw-quiet", say("equipment.none")));
        }
        cards.forEach(list::add);
        if (may) {
            var add = Tags.button("plain", say("equipment.add." + id.toLowerCase(Locale.ROOT)), pressed -> adds.run());
            add.setId(id.toLowerCase(Locale.ROOT));
            list.add(Tags.div("", add));
        }
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), clinic.zone());
    }

    /** Back to the list; beside it what may be done. */
    private void leave() {
        draw();
        show(Tags.p("hw-quiet", say(may ? "equipment.hint" : "equipment.read-only")));
    }

    /** Beside the list, or below it on a phone: then the form is brought into sight. */
    private void open(Component form) {
        show(form);
        form.scrollIntoView();
    }

    private void show(Component form) {
        beside.removeAll();
        beside.add(form);
    }

    private void newSeries() {
        change(Optional.empty());
    }

    @Override
    public void change(CastSeries series) {
        change(Optional.of(series));
    }

    private void change(Optional<CastSeries> known) {
        open(new CastForm(
                labels,
                today(),
                known,
                data -> settle(() -> known.ifPresentOrElse(
                        series -> casts.change(viewer, child, series.id(), data, series.version()),
                        () -> casts.enter(viewer, child, data))),
                this::leave));
    }

    @Override
    public void edit(Item item) {
        edit(Optional.of(item), item.kind().sort());
    }

    private void edit(Optional<Item> known, Sort sort) {
        var kinds =
                equipment.kinds().stream().filter(kind -> kind.sort() == sort).toList();
        open(new ItemForm(
                labels,
                today(),
                kinds,
                known,
                data -> settle(() -> known.ifPresentOrElse(
                        item -> equipment.change(viewer, child, item.id(), data, item.version()),
                        () -> equipment.enter(viewer, child, data))),
                this::leave));
    }

    @Override
    public void look(Item item, Item.What what) {
        open(new LookForm(
                labels,
                today(),
                item,
                what,
                look -> settle(() -> equipment.change(viewer, child, item.id(), item.with(look), item.version())),
                this::leave));
    }

    private void settle(Runnable act) {
        try {
            act.run();
            Told.done(say("equipment.saved"));
            leave();
        } catch (Overtaken overtaken) {
            // the form keeps what was typed; the list beside it shows the other's version
            Told.couldNot(say("equipment.overtaken"));
            draw();
        }
    }

    private String say(String key, Object... args) {
        return labels.say(key, args);
    }
}
