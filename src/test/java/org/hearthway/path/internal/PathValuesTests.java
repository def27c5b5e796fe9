package org.hearthway.path.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.stream.Stream;
import org.hearthway.path.engine.Amount;
import org.hearthway.path.engine.Amount.Gap;
import org.hearthway.path.engine.Amount.Times;
import org.hearthway.path.engine.PathValues;
import org.hearthway.path.engine.Template;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PathValuesTests {

    static Stream<Template> paths() {
        return ReadPaths.shipped().all().stream();
    }

    @ParameterizedTest
    @MethodSource("paths")
    void whatThePathSaysPutInItsPlacesIsThePath(Template path) {
        assertThat(PathValues.with(path, PathValues.of(path))).isEqualTo(path);
    }

    @ParameterizedTest
    @MethodSource("paths")
    void oneValueChangedIsOneValueChanged(Template path) {
        var values = PathValues.of(path);
        assertThat(values).hasSizeGreaterThan(20);
        values.forEach((place, amount) -> {
            var other = PathValues.of(PathValues.with(path, Map.of(place, more(amount))));
            assertThat(other).containsEntry(place, more(amount));
            other.put(place, amount);
            assertThat(other).as(place.toString()).isEqualTo(values);
        });
    }

    private static Amount more(Amount amount) {
        return amount instanceof Times times
                ? new Times(times.number() + 1)
                : new Gap(((Gap) amount).period().plusDays(1));
    }

    @ParameterizedTest
    @MethodSource("paths")
    void anAmountIsReadBackAsItIsWritten(Template path) {
        assertThat(PathValues.of(path).values())
                .allSatisfy(amount -> assertThat(Amount.parse(amount.text())).isEqualTo(amount));
    }
}
