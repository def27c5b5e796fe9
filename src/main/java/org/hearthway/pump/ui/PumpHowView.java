package org.hearthway.pump.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.DescriptionList;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import org.hearthway.access.SignedIn;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Viewer;
import org.hearthway.clinic.ClinicSettings;
import org.hearthway.parts.Icon;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Tags;
import org.hearthway.words.Words;

/** How the dates of a child's pump are worked out: every step with its letters and this child's figures. */
@Route("staff/child/:child/pump/how")
@RolesAllowed({"THERAPIST", "PHYSICIAN", "NURSE", "COORDINATOR"})
class PumpHowView extends Div implements BeforeEnterObserver, HasDynamicTitle {

    private static final int REMARKS = 5;

    private final transient PumpReader reader;
    private final transient Gate gate;
    private final transient PumpWords say;
    private final transient PumpFigures figures;
    private final transient Viewer.Person viewer;
    private final Div sheet = Tags.div("hw-how");

    PumpHowView(PumpReader reader, Gate gate, Words words, ClinicSettings clinic, SignedIn signedIn) {
        this.reader = reader;
        this.gate = gate;
        this.viewer = signedIn.require();
        this.say = new PumpWords(words, viewer.language());
        this.figures = new PumpFigures(say, clinic.zone());
        addClassName("hw-worksheet");
        add(Tags.div("hw-desk", sheet), new KeyBar().remark(say.say("pump.keys.written-down")));
    }

    @Override
    public String getPageTitle() {
        return say.say("pump.how.title");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var child =
                event.getRouteParameters().get("child").flatMap(ChildId::parse).orElseThrow(NotAvailable::new);
        gate.require(viewer, Action.SEE_FOLDER, child);
        draw(child, reader.read(viewer, child));
    }

    private void draw(ChildId child, PumpReading reading) {
        sheet.removeAll();
        sheet.add(
                Tags.link("hw-noprint", "staff/child/" + child + "/pump", say.say("pump.how.back")),
                Tags.div(
                        "hw-colh",
                        Tags.h2("u-xl", say.say("pump.how.title")),
                        Tags.span("grow", ""),
                        Tags.button(
                                "plain",
                                Icon.PRINT,
                                say.say("pump.state.print"),
                                pressed -> UI.getCurrent().getPage().executeJs("window.print()"))));
        if (reading.refillInCheck().isPresent()) {
            sheet.add(Tags.p("hw-quiet", say.say("pump.how.waits")));
            return;
        }
        if (reading.outlook().reservoir().isEmpty()) {
            sheet.add(Tags.p("hw-quiet", say.say("pump.how.nothing")));
            return;
        }
        sheet.add(Tags.p("", say.say("pump.how.intro", figures.moment(reading.now()))));
        var remarks = new OrderedList();
        for (var i = 1; i <= REMARKS; i++) {
            remarks.add(new ListItem(say.say("pump.how.remark." + i)));
        }
        var sums = new PumpSumsList(figures, reading, true);
        reading.outlook()
                .forecast()
                .flatMap(forecast -> forecast.alarm())
                .ifPresent(alarm -> remarks.add(new ListItem(say.say(
                        "pump.how.moment",
                        figures.moment(reading.outlook()
                                .reservoir()
                                .orElseThrow()
                                .filling()
                                .at()),
                        figures.figure(alarm.sinceFill().inDays()),
                        figures.moment(alarm.at())))));
        sheet.add(
                Tags.div("hw-howsums", sums),
                Tags.h2("", say.say("pump.how.letters")),
                letters(sums),
                Tags.h2("", say.say("pump.how.notes")),
                remarks,
                Tags.p("hw-sub", say.say("pump.state.caution")));
    }

    /** Those that stand on the page, in the order of the alphabet of the formulas. */
    private DescriptionList letters(PumpSumsList sums) {
        var list = new DescriptionList();
        list.addClassName("hw-letters");
        for (var symbol : sums.symbols()) {
            var letter = new DescriptionList.Term(DerivationList.signs(symbol.text()));
            letter.getElement().setAttribute("translate", "no");
            list.add(letter, new DescriptionList.Description(say.say("pump.sums.symbol." + symbol)));
        }
        return list;
    }
}
