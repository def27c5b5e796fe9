package org.hearthway.desk.ui;

import org.hearthway.base.Viewer;
import org.hearthway.desk.Desk;
import org.hearthway.parts.Tally;
import org.springframework.stereotype.Component;

/** How many rows stand on the desk, beside the place in the top bar. */
@Component
class DeskTally implements Tally {

    private final Desk desk;

    DeskTally(Desk desk) {
        this.desk = desk;
    }

    @Override
    public String place() {
        return "staff/desk";
    }

    @Override
    public int count(Viewer.Person viewer) {
        return desk.board(viewer).rows().size();
    }
}
