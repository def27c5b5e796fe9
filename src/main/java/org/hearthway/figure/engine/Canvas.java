package org.hearthway.figure.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Collects the shapes of one body, seen from one place and painted in one set of colours. */
final class Canvas {

    final View view;
    private final double scale;
    private final String owner;
    private final double line;
    private final List<Shape> shapes = new ArrayList<>();
    private int layer;
    private boolean far;
    private String group = "";

    /** For a body whose lengths are multiplied; {@code owner} is {@code ""} for the child, {@code h-} for the helper. */
    Canvas(View view, double scale, String owner) {
        this.view = view;
        this.scale = scale;
        this.owner = owner;
        this.line = owner.isEmpty() ? Shape.LINE : Shape.LINE * .8;
    }

    Canvas on(int layer, boolean far, String group) {
        this.layer = layer;
        this.far = far;
        this.group = group;
        return this;
    }

    boolean isFar() {
        return far;
    }

    Path hull(Lump... lumps) {
        return Path.hull(blobs(lumps));
    }

    Path small(Lump... lumps) {
        return Path.small(blobs(lumps));
    }

    private List<Blob> blobs(Lump... lumps) {
        return Arrays.stream(lumps).map(lump -> view.page(lump.scaled(scale))).toList();
    }

    Point page(Vec place) {
        return view.page(place.times(scale));
    }

    /** Filled in a colour of the body with its line around. */
    Path paint(String part, String color, Path path) {
        add(part, path, fill(color), "s-" + owner + "ink" + suffix(), line, Optional.empty());
        return path;
    }

    /** Filled only and cut to what it joins, so that the line of the joint goes. */
    void patch(String part, String color, Path path, Path within) {
        if (!far) {
            add(part, path, fill(color), "", 0, Optional.of(within));
        }
    }

    /** Filled with a line of the same colour. */
    void hair(String part, Path path) {
        add(part, path, "f-" + owner + "hair", "s-" + owner + "hair", line / 2, Optional.empty());
    }

    void dot(String part, Path path) {
        add(part, path, "f-" + owner + "ink", "", 0, Optional.empty());
    }

    void stroke(String part, Path path, double width) {
        add(part, path, "", "s-" + owner + "ink", width, Optional.empty());
    }

    private String fill(String color) {
        return "f-" + owner + color + suffix();
    }

    private String suffix() {
        return far ? "-far" : "";
    }

    private void add(String part, Path path, String fill, String stroke, double width, Optional<Path> clip) {
        shapes.add(new Shape(owner + group + "." + part, path, fill, stroke, width, clip, layer, owner.isEmpty()));
    }

    List<Shape> shapes() {
        return shapes;
    }
}
