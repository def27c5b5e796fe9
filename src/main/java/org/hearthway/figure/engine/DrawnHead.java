package org.hearthway.figure.engine;

import java.util.ArrayList;
import java.util.List;

/** Head, hair, ears and eyes; no mouth. */
final class DrawnHead {

    private final Canvas canvas;
    private final Body body;
    private final Flesh flesh;
    private final Look.Hair hair;
    private final double h;

    DrawnHead(Canvas canvas, Body body, Look.Hair hair) {
        this.canvas = canvas;
        this.body = body;
        this.flesh = new Flesh(body);
        this.hair = hair;
        this.h = body.unit();
    }

    private Vec at(double forward, double up, double right) {
        return body.skull.from(body.head, forward * h, up * h, right * h);
    }

    private double facing(Vec way) {
        return way.dot(canvas.view.viewer());
    }

    void draw() {
        boolean front = facing(body.skull.f()) > -.2;
        double side = facing(body.skull.r());
        boolean tailBehind = front || Math.abs(side) > .5;
        if (hair == Look.Hair.TAIL && tailBehind) {
            tail();
        }
        if (Math.abs(side) < .6) {
            ear(1);
            ear(-1);
        }
        canvas.paint("skull", "skin", canvas.hull(flesh.skull(), flesh.jaw()).with(nose()));
        caps();
        if (Math.abs(side) >= .6) {
            int near = side > 0 ? 1 : -1;
            ear(near);
        }
        eye(1);
        eye(-1);
        if (hair == Look.Hair.TAIL && !tailBehind) {
            tail();
        }
    }

    private Path nose() {
        return canvas.small(Lump.ball(at(.395, -.115, 0), .055 * h), Lump.ball(at(.33, -.03, 0), .05 * h));
    }

    private void tail() {
        canvas.hair(
                "tail",
                canvas.small(
                        Lump.ball(at(-.52, .16, 0), .11 * h),
                        Lump.ball(at(-.64, -.06, 0), .14 * h),
                        Lump.ball(at(-.62, -.36, 0), .06 * h)));
    }

    /** With a fold inside, or it looks like a mouth when the child lies down. */
    private void ear(int side) {
        var middle = at(-.05, -.06, side * .36);
        canvas.paint("ear" + side, "skin", canvas.small(new Lump(middle, body.skull, .075 * h, .10 * h, .045 * h)));
        canvas.stroke(
                "fold" + side,
                Path.smooth(List.of(
                        canvas.page(at(-.02, -.005, side * .40)),
                        canvas.page(at(-.105, -.02, side * .40)),
                        canvas.page(at(-.045, -.115, side * .40)))),
                2);
    }

    private void eye(int side) {
        var normal = body.skull.f().times(.85).plus(body.skull.r().times(side * .5));
        if (facing(normal) > .2) {
            canvas.dot("eye" + side, Path.disc(canvas.page(at(.335, .0, side * .16)), .043 * h * View.SCALE));
        }
    }

    private void caps() {
        double larger = hair == Look.Hair.CURLS ? 1.14 : 1.08;
        var skull = flesh.skull();
        var shell = new Lump(
                skull.middle(), skull.axes(), skull.depth() * larger, skull.height() * larger, skull.width() * larger);
        cap("nape", shell, new Vec(-.97, .10, 0), .20);
        cap("top", shell, new Vec(-.38, .92, 0), .30);
    }

    private void cap(String name, Lump shell, Vec normal, double cut) {
        Hair.cap(shell, normal, cut, canvas.view.viewer()).ifPresent(outline -> {
            var points = new ArrayList<Point>();
            outline.forEach(place -> points.add(canvas.page(place)));
            canvas.hair(name, Path.polygon(points));
        });
    }
}
