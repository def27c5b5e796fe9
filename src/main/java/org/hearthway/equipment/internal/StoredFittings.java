package org.hearthway.equipment.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hearthway.base.Action;
import org.hearthway.base.ChildId;
import org.hearthway.base.Gate;
import org.hearthway.base.Viewer;
import org.hearthway.equipment.Fittings;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads running series of casts and what was seen not to fit. */
@Service
class StoredFittings implements Fittings {

    private final CastRows casts;
    private final ItemRows items;
    private final Gate gate;

    StoredFittings(CastRows casts, ItemRows items, Gate gate) {
        this.casts = casts;
        this.items = items;
        this.gate = gate;
    }

    @Override
    @Transactional(readOnly = true)
    public Map<ChildId, List<Fitting>> all(Viewer viewer) {
        gate.require(viewer, Action.LIST_CHILDREN);
        var all = new HashMap<ChildId, List<Fitting>>();
        casts.running()
                .forEach((child, series) -> series.forEach(one ->
                        one.next().ifPresent(day -> add(all, child, new Fitting(Reason.CAST, one.id(), day)))));
        items.notFitting()
                .forEach((child, rows) -> rows.forEach(row -> row.data()
                        .mendSince()
                        .ifPresent(day -> add(all, child, new Fitting(Reason.MEND, row.id(), day)))));
        all.values()
                .forEach(list -> list.sort(Comparator.comparing(Fitting::day).thenComparing(Fitting::thing)));
        return all;
    }

    private static void add(Map<ChildId, List<Fitting>> all, ChildId child, Fitting fitting) {
        all.computeIfAbsent(child, key -> new ArrayList<>()).add(fitting);
    }
}
