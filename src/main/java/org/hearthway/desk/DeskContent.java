package org.hearthway.desk;

import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.springframework.stereotype.Component;

/** Reads {@code content/desk/rules.yaml}: how far ahead the desk looks. */
@Component
class DeskContent implements ContentKind {

    private int aheadDays;
    private int soonDays;
    private int outDays;
    private int refillWindowDays;
    private int checkWindowDays;
    private String refillKind = "";

    int aheadDays() {
        return aheadDays;
    }

    int soonDays() {
        return soonDays;
    }

    int outDays() {
        return outDays;
    }

    int refillWindowDays() {
        return refillWindowDays;
    }

    int checkWindowDays() {
        return checkWindowDays;
    }

    String refillKind() {
        return refillKind;
    }

    @Override
    public String place() {
        return "desk";
    }

    @Override
    public void read(Entry file) {
        file.provenance();
        aheadDays = file.integer("book-ahead-days", 1, 400);
        outDays = file.integer("going-out-days", 1, 60);
        soonDays = file.integer("ask-days-before", 1, 60);
        var refill = file.block("refill");
        refillKind = refill.text("visit");
        refillWindowDays = refill.integer("window-days", 1, 60);
        refill.done();
        var check = file.block("check");
        checkWindowDays = check.integer("window-days", 1, 90);
        check.done();
    }
}
