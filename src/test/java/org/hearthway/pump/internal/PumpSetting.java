package org.hearthway.pump.internal;

import static org.mockito.Mockito.mock;

import java.util.ArrayList;
import java.util.List;
import org.hearthway.base.Change;
import org.hearthway.child.ChildRegister;
import org.hearthway.child.Devices;
import org.hearthway.testing.LeanClinic;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.Import;
import org.springframework.context.event.EventListener;

/** Books of pumps on an empty database, children and devices from mocks. */
@Import(LeanClinic.class)
@ComponentScan("org.hearthway.pump.internal")
class PumpSetting {

    /** Hears what pumps tell. */
    static class Heard {
        final List<Change> changes = new ArrayList<>();

        @EventListener
        void on(Change change) {
            changes.add(change);
        }
    }

    @Bean
    Devices devices() {
        return mock();
    }

    @Bean
    ChildRegister children() {
        return mock();
    }

    @Bean
    Heard heard() {
        return new Heard();
    }
}
