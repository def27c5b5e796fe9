package org.hearthway.figure.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.hearthway.content.Entry;
import org.hearthway.figure.engine.Body;
import org.hearthway.figure.engine.FigureSheet;
import org.hearthway.figure.engine.FigureSheet.Thing;
import org.hearthway.figure.engine.HelperSheet;
import org.hearthway.figure.engine.Look;
import org.hearthway.figure.engine.Posture;
import org.hearthway.figure.engine.Proportions;
import org.hearthway.figure.engine.Room;
import org.hearthway.figure.engine.Side;
import org.hearthway.figure.engine.Stance;
import org.hearthway.figure.engine.Support;
import org.hearthway.figure.engine.Vec;
import org.hearthway.figure.engine.View;

/** Reads one picture file. */
final class SheetReader {

    private static final View FROM_THE_SIDE = new View(12, 8);
    private static final View FROM_THE_FRONT = new View(90, 9);

    private final Entry file;

    SheetReader(Entry file) {
        this.file = file;
    }

    FigureSheet read() {
        double years = file.maybeNumber("years", 2, 20, "years").orElse(6.0);
        var supports = supports();
        var room = new Room(supports, Proportions.at(years));
        var stances = new StanceReader(room);
        return new FigureSheet(
                id(),
                file.bilingual("title"),
                file.choice("kind", FigureSheet.Kind.class),
                view(),
                sided(),
                file.maybeInteger("hold", 1, 7_200).orElse(0),
                years,
                look(),
                supports,
                stances(stances),
                file.list("objects").stream().map(this::thing).toList(),
                file.blocks("arrow").stream().map(this::arrow).toList(),
                file.maybeBlock("lens").map(this::lens),
                file.maybeBlock("helper").map(helper -> helper(helper, stances)));
    }

    private String id() {
        var id = file.text("id");
        if (!id.equals(file.id())) {
            file.wrong("id", "\"id\" is " + id, "the file's name, " + file.id());
        }
        return id;
    }

    private View view() {
        if (file.isBlock("view")) {
            var view = file.block("view");
            var read = new View(view.number("yaw", -180, 180, "degrees"), view.number("pitch", 0, 45, "degrees"));
            view.done();
            return read;
        }
        var name = file.text("view");
        if (!name.equals("side") && !name.equals("front")) {
            file.wrong("view", "\"view\" is " + name, "side, front, or yaw and pitch");
        }
        return name.equals("front") ? FROM_THE_FRONT : FROM_THE_SIDE;
    }

    private boolean sided() {
        var side = file.text("side");
        if (!side.equals("R") && !side.equals("both")) {
            file.wrong("side", "\"side\" is " + side, "R, drawn for the right and mirrored for the left, or both");
        }
        return side.equals("R");
    }

    private Look look() {
        return file.maybeBlock("look")
                .map(entry -> {
                    var look = new Look(
                            entry.maybeChoice("hair", Look.Hair.class).orElse(Look.Hair.SHORT),
                            entry.maybeInteger("tone", 1, 4).orElse(2),
                            StanceReader.sides(entry, "splints"),
                            entry.yes("shoes"));
                    entry.done();
                    return look;
                })
                .orElse(Look.USUAL);
    }

    private List<Support> supports() {
        var found = new ArrayList<Support>();
        for (var named : file.named("supports")) {
            var kind = Support.Kind.of(named.name());
            if (kind.isEmpty()) {
                file.wrong(
                        "supports", "\"" + named.name() + "\" is no support", "mat, bench, table, walker and the like");
                continue;
            }
            Map<String, Double> settings = new TreeMap<>();
            for (var key : kind.get().knows()) {
                setting(named.settings(), key).ifPresent(value -> settings.put(key, value));
            }
            named.settings().done();
            found.add(new Support(kind.get(), settings));
        }
        return found;
    }

    private static Optional<Double> setting(Entry entry, String key) {
        if (key.equals("rail") || key.equals("arms")) {
            return Optional.of(entry.yes(key) ? 1.0 : 0.0);
        }
        if (key.equals("height") && entry.has(key) && entry.isText(key, "fit")) {
            return Optional.empty();
        }
        return entry.maybeNumber(key, -2, 6, "body heights");
    }

    private List<Stance> stances(StanceReader reader) {
        var stances = new ArrayList<Stance>();
        stances.add(reader.read(file.block("start")));
        file.list("through").forEach(entry -> stances.add(reader.read(entry)));
        stances.add(reader.read(file.block("end")));
        if (stances.get(0).posture().isEmpty()) {
            file.wrong("start", "the start has no posture", "a posture such as standing or supine");
        }
        return stances;
    }

    private Thing thing(Entry entry) {
        var sort = entry.has("ball")
                ? Thing.Sort.BALL
                : entry.has("band")
                        ? Thing.Sort.BAND
                        : entry.has("pillow")
                                ? Thing.Sort.PILLOW
                                : entry.has("towel") ? Thing.Sort.TOWEL : Thing.Sort.BLOCK;
        double size = switch (sort) {
            case BALL -> entry.number("ball", .02, .3, "body heights");
            case BLOCK -> entry.number("box", .02, .3, "body heights");
            case PILLOW -> entry.number("pillow", .02, .3, "body heights");
            case TOWEL -> entry.number("towel", .005, .06, "body heights");
            case BAND -> 0;
        };
        var track = sort == Thing.Sort.BAND
                ? entry.texts("band")
                : entry.maybeText("track").map(List::of).orElse(List.of());
        track.forEach(point -> known(entry, "track", point));
        if (sort == Thing.Sort.BAND && track.size() != 2) {
            entry.wrong("band", "the band has " + track.size() + " ends", "two points of the body");
        }
        var places = entry.has("at")
                ? List.of(place(entry, "at"))
                : entry.has("start") ? List.of(place(entry, "start"), place(entry, "end")) : List.<Vec>of();
        if (track.isEmpty() && places.isEmpty()) {
            entry.wrong("at", "it is nowhere", "at, start and end, or track");
        }
        var thing = new Thing(
                sort,
                size,
                track,
                entry.has("offset") ? place(entry, "offset") : new Vec(0, 0, 0),
                places,
                entry.maybeChoice("depth", Thing.Depth.class).orElse(Thing.Depth.FRONT));
        entry.done();
        return thing;
    }

    private static Vec place(Entry entry, String key) {
        var numbers = entry.numbers(key, 3);
        return new Vec(numbers.get(0), numbers.get(1), numbers.get(2));
    }

    private static void known(Entry entry, String key, String point) {
        if (!Body.knows(point)) {
            entry.wrong(key, "\"" + point + "\" is no point of the body", "such as hip, Rknee or Ltip");
        }
    }

    private FigureSheet.Arrow arrow(Entry entry) {
        var of = entry.text("of");
        known(entry, "of", of);
        var pivot = entry.maybeText("pivot");
        pivot.ifPresent(point -> known(entry, "pivot", point));
        var shift = entry.has("shift")
                ? Optional.of(entry.numbers("shift", 2)).map(n -> new Vec(n.get(0), n.get(1), 0))
                : Optional.<Vec>empty();
        var arrow = new FigureSheet.Arrow(
                of, pivot, entry.maybeNumber("off", 0, 1, "body heights").orElse(.08), entry.yes("flip"), shift);
        entry.done();
        return arrow;
    }

    private FigureSheet.Lens lens(Entry entry) {
        var of = entry.text("of");
        known(entry, "of", of);
        var at = entry.numbers("at", 2);
        var lens = new FigureSheet.Lens(
                of,
                at.get(0),
                at.get(1),
                entry.number("r", .05, .4, "body heights"),
                entry.number("zoom", 1, 3, "times"));
        entry.done();
        return lens;
    }

    private HelperSheet helper(Entry entry, StanceReader stances) {
        var front = entry.has("front") ? StanceReader.sides(entry, "front") : Set.<Side>of();
        var helper = new HelperSheet(
                entry.choice("posture", Posture.class),
                entry.choice("facing", HelperSheet.Facing.class),
                entry.number("x", -2, 2, "body heights"),
                entry.number("z", -2, 2, "body heights"),
                StanceReader.values(entry),
                stances.contacts(entry),
                front);
        entry.done();
        return helper;
    }
}
