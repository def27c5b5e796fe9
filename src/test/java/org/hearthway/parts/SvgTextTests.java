package org.hearthway.parts;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SvgTextTests {

    @Test
    void textsAndAttributesAreEscaped() {
        var hostile = "<script>alert('x')</script>\"&";
        var picture = new SvgText("a", 0, 0, 1, 1).named(hostile).text(0, 0, "b", "end", hostile);
        assertThat(picture.toString())
                .doesNotContain("<script>")
                .contains("&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt;&quot;&amp;");
    }

    @Test
    void coordinatesAreWrittenWithAPointAndNoTail() {
        assertThat(SvgText.number(1.5)).isEqualTo("1.5");
        assertThat(SvgText.number(20)).isEqualTo("20");
        assertThat(SvgText.number(-0.125)).isIn("-0.12", "-0.13");
    }
}
