package org.hearthway.equipment.internal;

import java.util.List;
import org.hearthway.base.Holding;
import org.hearthway.base.Holding.Rows;
import org.hearthway.base.Holdings;
import org.springframework.stereotype.Component;

/** What a child wears and uses, version by version. */
@Component
class EquipmentHoldings implements Holdings {

    @Override
    public List<Holding> all() {
        return List.of(
                Rows.of("equipment-item", "equipment_item", "child", "id"),
                Rows.of("equipment-look", "equipment_look", "child", "item"),
                Rows.of("cast-series", "cast_series", "child", "id"),
                Rows.of("cast-worn", "cast_worn", "child", "series"));
    }
}
