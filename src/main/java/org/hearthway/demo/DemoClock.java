package org.hearthway.demo;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.context.annotation.Primary;
import org.springframework.stereotype.Component;

/**
 * The demo's clock. It stands in the past while the demo's last weeks are lived through, before the first request; then
 * it tells the time.
 */
@Component
@Primary
@DemoProfile
class DemoClock extends Clock {

    private final Clock real;
    private volatile @Nullable Instant past;

    DemoClock(@Qualifier("clock") Clock real) {
        this.real = real;
    }

    void goTo(Instant moment) {
        past = moment;
    }

    void comeBack() {
        past = null;
    }

    @Override
    public Instant instant() {
        var moment = past;
        return moment == null ? real.instant() : moment;
    }

    @Override
    public ZoneId getZone() {
        return real.getZone();
    }

    @Override
    public Clock withZone(ZoneId zone) {
        var whole = this;
        return new Clock() {
            @Override
            public Instant instant() {
                return whole.instant();
            }

            @Override
            public ZoneId getZone() {
                return zone;
            }

            @Override
            public Clock withZone(ZoneId other) {
                return whole.withZone(other);
            }
        };
    }
}
