package org.hearthway.content;

import java.util.List;
import org.hearthway.base.Bilingual;
import org.hearthway.base.Problem;

/**
 * One kind of content, implemented by the feature that uses it. All kinds are read once, before the program takes
 * its first request; every mistake of every kind is then told together and the start stops.
 */
public interface ContentKind {

    /** Which files are this kind's: a folder under {@code content/} such as {@code exercises}, or one file. */
    String place();

    /** Takes in one file. Mistakes are noted on the entry and reading goes on. */
    void read(Entry file);

    /** Looks across all that was read, once everything of every kind is in: do links resolve, is a rule kept. */
    default void check() {}

    /**
     * What of this kind families read and an administrator of a real clinic must accept first; empty for content that
     * families do not read or that says nothing medical.
     */
    default List<FamilyText> familyTexts() {
        return List.of();
    }

    /**
     * What this kind asks of a family text beyond what holds for all of them; asked when a clinic puts its own words in
     * place of it.
     *
     * @return problems at {@code en} or {@code es}
     */
    default List<Problem> problems(Bilingual words) {
        return List.of();
    }
}
