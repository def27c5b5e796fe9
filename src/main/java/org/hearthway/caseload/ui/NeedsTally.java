package org.hearthway.caseload.ui;

import org.hearthway.base.Viewer;
import org.hearthway.caseload.Needs;
import org.hearthway.parts.Tally;
import org.springframework.stereotype.Component;

/** How many items need a look, beside the place in the top bar. */
@Component
class NeedsTally implements Tally {

    private final Needs needs;

    NeedsTally(Needs needs) {
        this.needs = needs;
    }

    @Override
    public String place() {
        return "staff/needs";
    }

    @Override
    public int count(Viewer.Person viewer) {
        return (int) needs.open(viewer).stream()
                .filter(item -> item.aside().isEmpty())
                .count();
    }
}
