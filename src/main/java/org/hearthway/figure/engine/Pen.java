package org.hearthway.figure.engine;

/** Writes path data relative and in whole tenths, so that rounding does not add up. */
final class Pen {

    private final StringBuilder out = new StringBuilder();
    private long x;
    private long y;
    private double left = Double.POSITIVE_INFINITY;
    private double top = Double.POSITIVE_INFINITY;
    private double right = Double.NEGATIVE_INFINITY;
    private double bottom = Double.NEGATIVE_INFINITY;
    private char last = ' ';

    void move(Point to) {
        command('M');
        number(tenths(to.x()), true);
        number(tenths(to.y()), false);
        at(to);
    }

    void line(Point to) {
        command('l');
        relative(to);
        at(to);
    }

    void curve(Point control, Point to) {
        command('q');
        relative(control);
        out.append(' ');
        relative(to);
        at(to);
    }

    private void command(char command) {
        if (command == last) {
            out.append(' ');
        } else {
            out.append(command);
        }
        last = command;
    }

    private void relative(Point to) {
        number(tenths(to.x()) - x, true);
        number(tenths(to.y()) - y, false);
    }

    private void number(long tenths, boolean first) {
        if (!first && tenths >= 0) {
            out.append(' ');
        }
        if (tenths < 0) {
            out.append('-');
        }
        long size = Math.abs(tenths);
        if (size >= 10 || size == 0) {
            out.append(size / 10);
        }
        if (size % 10 != 0) {
            out.append('.').append(size % 10);
        }
    }

    private void at(Point to) {
        x = tenths(to.x());
        y = tenths(to.y());
        left = Math.min(left, to.x());
        top = Math.min(top, to.y());
        right = Math.max(right, to.x());
        bottom = Math.max(bottom, to.y());
    }

    private static long tenths(double value) {
        return Math.round(value * 10);
    }

    Path close() {
        out.append('z');
        return open();
    }

    Path open() {
        return new Path(out.toString(), left, top, right, bottom);
    }
}
