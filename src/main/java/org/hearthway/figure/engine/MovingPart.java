package org.hearthway.figure.engine;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Writes key poses as one drawing that moves, or, where they do not hold the same parts, one after the other. */
final class MovingPart {

    private final StringBuilder out;
    private final String prefix;
    private final Set<String> used;

    MovingPart(StringBuilder out, String prefix, Set<String> used) {
        this.out = out;
        this.prefix = prefix;
        this.used = used;
    }

    void write(List<List<Shape>> poses) {
        if (areDrawnAlike(poses)) {
            new SvgPart(out, prefix, used).moving(poses);
        } else {
            inTurn(poses);
        }
    }

    private static boolean areDrawnAlike(List<List<Shape>> poses) {
        var first = poses.get(0);
        return poses.stream().allMatch(pose -> {
            boolean alike = pose.size() == first.size();
            for (int i = 0; alike && i < first.size(); i++) {
                alike = pose.get(i).isDrawnLike(first.get(i))
                        && commands(pose.get(i).path())
                                .equals(commands(first.get(i).path()));
            }
            return alike;
        });
    }

    private static String commands(Path path) {
        return path.data().replaceAll("[-. \\d]", "");
    }

    private void inTurn(List<List<Shape>> poses) {
        var order = Cycle.order(poses.size());
        for (int i = 0; i < poses.size(); i++) {
            int pose = i;
            out.append("<g visibility=\"").append(i == 0 ? "visible" : "hidden").append("\">");
            out.append("<animate attributeName=\"visibility\" calcMode=\"discrete\" repeatCount=\"indefinite\" dur=\"")
                    .append(Cycle.SECONDS)
                    .append("s\" keyTimes=\"")
                    .append(Cycle.times(poses.size()))
                    .append("\" values=\"")
                    .append(order.stream()
                            .map(k -> k == pose ? "visible" : "hidden")
                            .collect(Collectors.joining(";")))
                    .append("\"/>");
            new SvgPart(out, prefix + i, used).still(poses.get(i));
            out.append("</g>");
        }
    }
}
