package org.hearthway.medicine.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;

class ToxinUnitsProperties {

    private static final List<Preparation> VIALS =
            List.of(new Preparation("Vial Alder"), new Preparation("Vial Birch"), new Preparation("Vial Cedar"));

    @Property
    void unitsOfTwoPreparationsNeverAddUp(
            @ForAll @BigRange(min = "0.01", max = "2000") @Scale(2) BigDecimal first,
            @ForAll @BigRange(min = "0.01", max = "2000") @Scale(2) BigDecimal second) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ToxinUnits(first, VIALS.get(0)).plus(new ToxinUnits(second, VIALS.get(1))));
    }

    @Property
    void eachPreparationHasItsOwnTotalOfWhatWasGivenOfIt(
            @ForAll @Size(max = 12) List<@IntRange(min = 1, max = 300) Integer> amounts) {
        var all = new java.util.ArrayList<ToxinUnits>();
        for (var place = 0; place < amounts.size(); place++) {
            all.add(new ToxinUnits(BigDecimal.valueOf(amounts.get(place)), VIALS.get(amounts.get(place) % 3)));
        }
        var totals = ToxinUnits.totals(all);
        assertThat(totals).extracting(ToxinUnits::preparation).doesNotHaveDuplicates();
        for (var total : totals) {
            var sum = amounts.stream()
                    .filter(amount -> VIALS.get(amount % 3).equals(total.preparation()))
                    .mapToInt(Integer::intValue)
                    .sum();
            assertThat(total.amount()).isEqualByComparingTo(BigDecimal.valueOf(sum));
        }
    }

    @Property
    void aNameIsOnePreparationHoweverItsLettersAndSpacesAreTyped(@ForAll @IntRange(max = 2) int vial) {
        var name = VIALS.get(vial).name();
        assertThat(new Preparation(" " + name.toUpperCase(java.util.Locale.ROOT).replace(" ", "   ")))
                .isEqualTo(VIALS.get(vial))
                .isNotEqualTo(VIALS.get((vial + 1) % 3));
    }
}
