package org.hearthway.program.internal;

import org.hearthway.content.ContentKind;
import org.hearthway.content.Entry;
import org.hearthway.program.engine.Pace;
import org.springframework.stereotype.Component;

/** How long the clinic reckons exercises take. */
@Component
class PaceSetting implements ContentKind {

    private Pace pace = new Pace(1, 0);

    @Override
    public String place() {
        return "pace.yaml";
    }

    @Override
    public void read(Entry file) {
        pace = new Pace(file.integer("seconds-a-repetition", 1, 60), file.integer("rest-seconds", 0, 600));
        file.text("source");
    }

    Pace pace() {
        return pace;
    }
}
