package org.hearthway.testing;

import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.springframework.test.context.junit.jupiter.SpringExtension;

/** Puts the shared clock back before each test, wherever the test before left it. */
final class FromTheStart implements BeforeEachCallback {

    @Override
    public void beforeEach(ExtensionContext test) {
        SpringExtension.getApplicationContext(test).getBean(SettableClock.class).set(HearthwayTest.START);
    }
}
