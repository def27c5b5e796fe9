package org.hearthway.figure.engine;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something that carries the body.
 *
 * @param settings where it stands and how large it is, in body heights; what is not said has a usual size
 */
public record Support(Kind kind, Map<String, Double> settings) {

    /** What it is; with the settings that it knows. */
    public enum Kind {
        MAT("mat", "half"),
        BENCH("bench", "at half height"),
        CHAIR("chair", "at half height back arms"),
        WHEELCHAIR("wheelchair", "at half height back"),
        STEP("step", "at height depth"),
        STAIRS("stairs", "at height depth count rail rail-height"),
        TABLE("table", "at height half depth aside"),
        WALL("wall", "at height"),
        WALKER("walker", "at height"),
        STANDING_FRAME("standing-frame", ""),
        ROLL("roll", "at r"),
        CUSHION("cushion", "at height depth half"),
        BALL("ball", "at r"),
        TREADMILL("treadmill", "at height"),
        LINE("line", ""),
        BED("bed", "at height depth half");

        private final String key;
        private final String knows;

        Kind(String key, String knows) {
            this.key = key;
            this.knows = knows;
        }

        /** As pose files write it. */
        public String key() {
            return key;
        }

        /** The settings that may be said of it. */
        public java.util.Set<String> knows() {
            return knows.isEmpty() ? java.util.Set.of() : java.util.Set.of(knows.split(" "));
        }

        /** The support that a pose file names. */
        public static Optional<Kind> of(String key) {
            return java.util.Arrays.stream(values())
                    .filter(k -> k.key.equals(key))
                    .findFirst();
        }
    }

    public Support {
        settings = Map.copyOf(settings);
    }

    double get(String key, double usual) {
        return settings.getOrDefault(key, usual);
    }

    /** Height of its seat, plate or top in body heights; a seat fits the child unless said otherwise. */
    double top(Proportions size) {
        return switch (kind) {
            case MAT, WALL, LINE -> 0;
            case BENCH, CHAIR, WHEELCHAIR -> get("height", size.shank() + size.ankle() - .056);
            case STEP, STAIRS -> get("height", .10);
            case TABLE -> get("height", .46);
            case WALKER -> get("height", .48);
            case STANDING_FRAME -> .56;
            case ROLL -> 2 * get("r", .045);
            case CUSHION -> get("height", .06);
            case BALL -> 2 * get("r", .125) - SINKS;
            case TREADMILL -> get("height", .05);
            case BED -> get("height", .32);
        };
    }

    OptionalDouble surface(String name, Proportions size) {
        boolean mine = name.equals(kind.key)
                || (kind == Kind.STANDING_FRAME && name.equals("tray"))
                || ((kind == Kind.CHAIR || kind == Kind.WHEELCHAIR) && name.equals("seat"));
        if (mine && kind != Kind.WALL && kind != Kind.WALKER) {
            return OptionalDouble.of(top(size));
        }
        if (kind == Kind.STAIRS && name.matches("step[1-9]") && name.charAt(4) - '0' <= get("count", 3)) {
            return OptionalDouble.of(top(size) * (name.charAt(4) - '0'));
        }
        return OptionalDouble.empty();
    }

    /** How far from the middle the rail and the grips are. */
    static final double ASIDE = .165;

    /** How high above the edges of the steps the rail of stairs is. */
    double railing() {
        return get("rail-height", .42);
    }

    /** How deep a child sits in a big ball. */
    private static final double SINKS = .02;

    /** How far above the seat a chair's armrests are. */
    static final double ARMREST = .09;

    /** Height of a treadmill's rails. */
    static final double HANDRAIL = .46;

    Optional<Vec> anchor(String name, Proportions size) {
        double at = get("at", .15);
        double rise = get("height", .10);
        return switch (name) {
            case "grip.R", "grip.L" ->
                kind == Kind.WALKER
                        ? Optional.of(new Vec(at, top(size), name.endsWith("R") ? ASIDE : -ASIDE))
                        : Optional.empty();
            case "rail.low" ->
                kind == Kind.STAIRS ? Optional.of(new Vec(at + .09, railing() + rise * .5, -ASIDE)) : Optional.empty();
            case "rail.high" ->
                kind == Kind.STAIRS
                        ? Optional.of(new Vec(at + .09 + get("depth", .19), railing() + rise * 1.5, -ASIDE))
                        : Optional.empty();
            case "rim.R", "rim.L" ->
                kind == Kind.WHEELCHAIR
                        ? Optional.of(new Vec(get("at", 0) + .02, .30, name.endsWith("R") ? .155 : -.155))
                        : Optional.empty();
            case "arm.R", "arm.L" ->
                kind == Kind.CHAIR && get("arms", 0) > 0
                        ? Optional.of(new Vec(
                                get("at", 0) + .05,
                                top(size) + ARMREST,
                                name.endsWith("R") ? get("half", .14) : -get("half", .14)))
                        : Optional.empty();
            case "handrail.R", "handrail.L" ->
                kind == Kind.TREADMILL
                        ? Optional.of(new Vec(get("at", 0) + .16, HANDRAIL, name.endsWith("R") ? ASIDE : -ASIDE))
                        : Optional.empty();
            default -> Optional.empty();
        };
    }
}
