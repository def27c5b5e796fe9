package org.hearthway.figure.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.zip.GZIPInputStream;
import org.hearthway.base.Language;
import org.hearthway.figure.Figure.Shown;
import org.junit.jupiter.api.Test;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;

/** The served pictures. */
class FigureDoorTests {

    private final DrawnFigures figures = ShippedFigures.drawn();
    private final MockMvc door =
            MockMvcBuilders.standaloneSetup(new FigureDoor(figures)).build();

    private String address(Shown shown, boolean left, int tone) {
        return "/" + figures.named("clam").address(shown, left, tone, Language.EN);
    }

    @Test
    void mayBeKeptForGood() throws Exception {
        door.perform(get(address(Shown.END, false, 0)))
                .andExpect(status().isOk())
                .andExpect(content().contentType("image/svg+xml"))
                .andExpect(header().string("Cache-Control", "max-age=31536000, public, immutable"));
    }

    @Test
    void comePackedToWhomCanUnpack() throws Exception {
        var address = address(Shown.MOVING, false, 0);
        var plain = door.perform(get(address)).andReturn().getResponse();
        var packed = door.perform(get(address).header("Accept-Encoding", "gzip, br"))
                .andExpect(header().string("Content-Encoding", "gzip"))
                .andReturn()
                .getResponse();
        var unpacked = new GZIPInputStream(new ByteArrayInputStream(packed.getContentAsByteArray())).readAllBytes();
        assertThat(new String(unpacked, StandardCharsets.UTF_8))
                .isEqualTo(plain.getContentAsString(StandardCharsets.UTF_8));
        assertThat(packed.getContentAsByteArray().length).isLessThan(unpacked.length / 3);
    }

    @Test
    void haveAnAddressForEachSideAndToneThatFollowsWhatIsDrawn() {
        var right = address(Shown.END, false, 0);
        assertThat(right).isEqualTo(address(Shown.END, false, 0));
        assertThat(address(Shown.END, true, 0)).isNotEqualTo(right).contains("-left-");
        assertThat(digest(address(Shown.END, false, 4))).isNotEqualTo(digest(right));
    }

    private static String digest(String address) {
        return address.split("/")[2];
    }

    @Test
    void areOnlyWhatIsDrawnNow() throws Exception {
        var address = address(Shown.END, false, 0);
        door.perform(get(address.replace(digest(address), "0123456789abcdef"))).andExpect(status().isNotFound());
        door.perform(get(address.replace("clam", "no-such"))).andExpect(status().isNotFound());
        door.perform(get(address.replace("-0-", "-9-"))).andExpect(status().isNotFound());
        door.perform(get("/figure/x/..%2F..%2Fsecret.svg")).andExpect(status().is4xxClientError());
    }
}
