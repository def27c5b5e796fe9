package org.hearthway.access.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.dom.Element;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import org.hearthway.access.SignedIn;
import org.hearthway.content.Hazards;
import org.hearthway.content.Hazards.Hazard;
import org.hearthway.content.Hazards.Proof;
import org.hearthway.parts.KeyBar;
import org.hearthway.parts.Tags;
import org.hearthway.words.Words;

/** What could go wrong, what would lead to it, what the program does against it, and the tests that prove that. */
@Route("staff/clinic/hazards")
@RolesAllowed("ADMINISTRATOR")
class HazardsView extends ClinicPage {

    private static final String[] COLUMNS = {"hazard", "cause", "control", "proof"};

    HazardsView(Hazards hazards, Words words, SignedIn signedIn) {
        super("hazards", words, signedIn);
        addClassName("hw-clinic-hazards");
        var fields = hazards.all(viewer());
        var count = fields.stream().mapToInt(field -> field.hazards().size()).sum();
        var tests = fields.stream()
                .flatMap(field -> field.hazards().stream())
                .flatMap(hazard -> hazard.proofs().stream())
                .distinct()
                .count();
        main.add(Tags.p("hw-quiet", say("access.hazards.count", count, tests)));
        for (var field : fields) {
            main.add(Tags.h2("hw-kind", field.name().in(language)));
            var table = table(field.name().in(language), "access.hazards.", COLUMNS);
            field.hazards().forEach(hazard -> table.getBody().add(row(hazard)));
            main.add(table);
        }
    }

    private NativeTableRow row(Hazard hazard) {
        var says = new NativeTableHeaderCell(hazard.says().in(language));
        says.getElement().setAttribute("scope", "row");
        says.addClassName("kidn");
        return new NativeTableRow(
                says,
                told("cause", Tags.span("", hazard.cause().in(language))),
                told("control", Tags.span("", hazard.control().in(language))),
                told("proof", hazard.proofs().stream().map(HazardsView::proof).toArray(Component[]::new)));
    }

    /** A cell that names its column again where a phone stacks the cells. */
    private NativeTableCell told(String column, Component... parts) {
        var name = Tags.span("hw-stacked", say("access.hazards." + column));
        name.getElement().setAttribute("aria-hidden", "true");
        var cell = cell(name);
        cell.add(parts);
        return cell;
    }

    /** A test's exact name, to be copied and found; a line may end before each of its words. */
    private static Component proof(Proof proof) {
        var name = Tags.div("hw-proof");
        for (var word : (proof.type() + "#" + proof.method()).split("(?=[A-Z#])")) {
            name.getElement().appendChild(new Element("wbr"), Element.createText(word));
        }
        return name;
    }

    @Override
    KeyBar keys() {
        return new KeyBar();
    }
}
