package org.hearthway.medicine.internal;

import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.hearthway.medicine.engine.ToxinInterval;
import org.springframework.stereotype.Component;

/** The clinic's least time between two toxin sessions, in {@code content/medicine/toxin.yaml}. */
@Component
class IntervalSetting implements ContentKind {

    private ToxinInterval interval = new ToxinInterval(ToxinInterval.MOST);

    @Override
    public String place() {
        return "medicine/toxin.yaml";
    }

    @Override
    public void read(Entry file) {
        interval = new ToxinInterval(file.integer("interval-days", 1, ToxinInterval.MOST));
        file.provenance();
    }

    ToxinInterval interval() {
        return interval;
    }
}
