package org.hearthway.family;

import java.time.Clock;
import java.util.List;
import org.hearthway.access.SignedIn;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Viewer;
import org.hearthway.child.Child;
import org.hearthway.child.ChildRegister;
import org.hearthway.words.Words;
import org.springframework.stereotype.Component;

/** Finds out for whom a page is made; who may not see the child gets no page. */
@Component
class Readers {

    private final SignedIn signedIn;
    private final ChildRegister children;
    private final Words words;
    private final Clock clock;

    Readers(SignedIn signedIn, ChildRegister children, Words words, Clock clock) {
        this.signedIn = signedIn;
        this.children = children;
        this.words = words;
        this.clock = clock;
    }

    /**
     * The reader of a page about the child that the address names.
     *
     * @throws NotAvailable when the address names none, or one that is not this person's
     */
    Reader read(String child) {
        var viewer = signedIn.require();
        var id = ChildId.parse(child).orElseThrow(NotAvailable::new);
        return new Reader(viewer, children.get(viewer, id), clock.instant(), words);
    }

    String words(Language language, String key) {
        return words.say(language, key);
    }

    Viewer.Person viewer() {
        return signedIn.require();
    }

    List<Child> mine(Viewer.Person viewer) {
        return children.mine(viewer);
    }
}
