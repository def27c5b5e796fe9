package org.hearthway.family;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.hearthway.access.SignedIn;
import org.hearthway.base.ChildId;
import org.hearthway.base.Language;
import org.hearthway.base.NotAvailable;
import org.hearthway.base.Viewer;
import org.hearthway.child.Child;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Helpers;
import org.hearthway.child.Merges;
import org.hearthway.figure.Figure;
import org.hearthway.figure.Figures;
import org.hearthway.words.Words;
import org.springframework.stereotype.Component;

/** Finds out for whom a page is made; who may not see the child gets no page. */
@Component
class Readers {

    private final SignedIn signedIn;
    private final ChildRegister children;
    private final Helpers helpers;
    private final Merges merges;
    private final Words words;
    private final Clock clock;
    private final Figures figures;

    Readers(
            SignedIn signedIn,
            ChildRegister children,
            Helpers helpers,
            Merges merges,
            Words words,
            Clock clock,
            Figures figures) {
        this.signedIn = signedIn;
        this.children = children;
        this.helpers = helpers;
        this.merges = merges;
        this.words = words;
        this.clock = clock;
        this.figures = figures;
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

    /**
     * The reader of a helper's page.
     *
     * @throws NotAvailable when the address names no child, or one whom this person does not help today
     */
    Reader helping(String child) {
        var viewer = signedIn.require();
        var id = ChildId.parse(child).orElseThrow(NotAvailable::new);
        return new Reader(viewer, helpers.glimpse(viewer, id), Reader.HELPER, clock.instant(), words);
    }

    /** Where an address leads whose child was entered twice, see {@link Merges}. */
    Optional<ChildId> goesOnAs(String child) {
        return ChildId.parse(child).flatMap(id -> merges.goesOnAs(signedIn.require(), id));
    }

    List<Helpers.Glimpse> helped(Viewer.Person viewer) {
        return helpers.mine(viewer);
    }

    /** A child at rest: the bridge begins lying on the back. */
    Figure resting() {
        return figures.named("bridge");
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
