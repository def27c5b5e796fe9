package org.hearthway.sign.internal;

import java.util.List;
import org.hearthway.base.Holding;
import org.hearthway.base.Holding.Rows;
import org.hearthway.base.Holdings;
import org.springframework.stereotype.Component;

/** What is kept of the signs that were reported of a child. */
@Component
class SignHoldings implements Holdings {

    @Override
    public List<Holding> all() {
        return List.of(Rows.of("sign-report", "sign_report", "child", "id"));
    }
}
