package org.hearthway.path.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.router.Location;
import java.util.Optional;
import org.hearthway.base.ChildId;
import org.junit.jupiter.api.Test;

class PathAddressTests {

    private final ChildId child = ChildId.random();

    private PathAddress read(String link) {
        return PathAddress.of(child, new Location(link).getQueryParameters());
    }

    @Test
    void whatIsShownIsReadBackFromItsLink() {
        for (var zoom : Zoom.values()) {
            for (boolean comparing : new boolean[] {false, true}) {
                var plain = new PathAddress(child, Optional.empty(), Optional.empty(), zoom, comparing);
                assertThat(read(plain.link())).isEqualTo(plain);
                var chosen = plain.at("sdr", "growing/2");
                assertThat(read(chosen.link())).isEqualTo(chosen);
            }
        }
    }

    @Test
    void namesNothingThatIsAsUsual() {
        assertThat(read("staff/child/" + child + "/path").link()).isEqualTo("staff/child/" + child + "/path");
    }

    @Test
    void changesOneThingAndKeepsTheRest() {
        var address = read("staff/child/x/path?path=sdr&stage=operation&compare=yes");
        assertThat(address.nearer(Zoom.YEAR).stage()).contains("operation");
        assertThat(address.comparing(false).path()).contains("sdr");
        assertThat(address.withoutStage())
                .isEqualTo(new PathAddress(child, Optional.empty(), Optional.empty(), Zoom.ALL, true));
    }
}
