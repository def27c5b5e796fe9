package org.hearthway.sign.internal;

import java.util.Optional;
import org.hearthway.base.Bilingual;
import org.hearthway.path.SignTexts;
import org.hearthway.sign.Sign;
import org.hearthway.sign.Signs;
import org.springframework.stereotype.Component;

/** Tells the paths what the signs say that their stages point to. */
@Component
class SignsOfStages implements SignTexts {

    private final Signs signs;

    SignsOfStages(Signs signs) {
        this.signs = signs;
    }

    @Override
    public Optional<Bilingual> says(String sign) {
        return signs.find(sign).map(Sign::says);
    }
}
