package org.hearthway.content;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Viewer;

/**
 * What a clinic lets families read. In a real clinic a text that a named administrator has not accepted, or has sent
 * back, stays hidden from families; the demo shows all of it and says so. The clinic may put its own words in place of
 * a piece of a text. Nothing is taken away: the newest decision and the newest words count.
 */
public interface SignOff {

    /** Fewest characters of a reason for sending a text back. */
    int REASON_MIN = 3;

    /** Most characters of a reason for sending a text back. */
    int REASON_MAX = 500;

    /**
     * One piece of family content.
     *
     * @param kind the place of its kind, for instance {@code signs}
     * @param id identifier within the kind
     * @param version the version of its text; a new version asks for a new acceptance and for own words anew
     */
    record Item(String kind, String id, int version) {}

    /** What an administrator decided. */
    enum Decided {
        ACCEPTED,
        SENT_BACK
    }

    /**
     * A decision on an item.
     *
     * @param number counted up from 1 for each item
     * @param reason why it was sent back; empty when accepted
     * @param by the viewer's tag
     */
    record Decision(Item item, int number, Decided decided, String reason, String by, Instant at) {}

    /**
     * The clinic's own words for a piece of an item, or their withdrawal.
     *
     * @param place which piece: 0 the title, then the texts in order
     * @param number counted up from 1 for each piece
     * @param words empty when the text's own words count again
     * @param by the viewer's tag
     */
    record OwnWords(Item item, int place, int number, Optional<Bilingual> words, String by, Instant at) {}

    /** Whether families may see this. */
    boolean isShown(Item item);

    /** Which of these families may see; one query however many. */
    Set<Item> shownAmong(List<Item> items);

    /** The clinic's own words that count now, by place; empty where the text's own do. */
    Map<Integer, Bilingual> ownWords(Item item);

    /** All content that families read, by kind and English title; for administrators. */
    List<FamilyText> all(Viewer viewer);

    /** Every decision, the oldest of each item first; for administrators. */
    List<Decision> decisions(Viewer viewer);

    /** All own words ever written, the oldest of each piece first; for administrators. */
    List<OwnWords> allOwnWords(Viewer viewer);

    /**
     * The day on which a text is to be looked at again.
     *
     * @param accepted the clinic's day of the acceptance that counts, if there is one
     * @return the interval after the later of acceptance and review in both languages; empty before either
     */
    Optional<LocalDate> dueAgain(Viewer viewer, FamilyText text, Optional<LocalDate> accepted);

    /**
     * Accepts the items in the viewer's name; those already accepted stay as they are.
     *
     * @throws org.hearthway.base.NotAvailable unless an administrator
     * @throws org.hearthway.base.Overtaken when one of them was sent back: that asks for {@link #accept(Viewer, Item, int)}
     */
    void accept(Viewer viewer, List<Item> items);

    /**
     * Accepts one item, also one that was sent back.
     *
     * @param seen the number of the newest decision that the viewer saw, 0 for none
     * @throws org.hearthway.base.Overtaken when somebody has decided since
     */
    void accept(Viewer viewer, Item item, int seen);

    /**
     * Sends an item back: in a real clinic families no longer see it.
     *
     * @param reason {@value #REASON_MIN} to {@value #REASON_MAX} characters
     * @param seen the number of the newest decision that the viewer saw, 0 for none
     * @throws org.hearthway.base.Invalid at {@code reason}
     * @throws org.hearthway.base.Overtaken when somebody has decided since
     */
    void sendBack(Viewer viewer, Item item, String reason, int seen);

    /**
     * Puts the clinic's own words in place of a piece of a text, checked by the rules of its kind.
     *
     * @param place which piece: 0 the title, then the texts in order
     * @param seen the number of the newest own words of that piece that the viewer saw, 0 for none
     * @throws org.hearthway.base.Invalid at {@code en} or {@code es}
     * @throws org.hearthway.base.Overtaken when somebody has written since
     */
    void reword(Viewer viewer, Item item, int place, String en, String es, int seen);

    /**
     * Lets the text's own words count again.
     *
     * @param seen the number of the newest own words of that piece that the viewer saw
     * @throws org.hearthway.base.Overtaken when somebody has written since, or there are none
     */
    void withdraw(Viewer viewer, Item item, int place, int seen);
}
