package org.hearthway.path;

import java.util.Optional;
import org.hearthway.base.Bilingual;

/** The signs that a stage points to, in this clinic's words; a port, implemented where signs are kept. */
public interface SignTexts {

    /** A sign in family words; empty when there is none of this identifier. */
    Optional<Bilingual> says(String sign);
}
