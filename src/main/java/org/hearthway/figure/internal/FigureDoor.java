package org.hearthway.figure.internal;

import java.time.Duration;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestHeader;

/**
 * Serves pictures. They tell nothing of a child and stand open, like the theme. An address holds a digest of what is
 * drawn: what it names never changes, and an old address of a picture that was redrawn ends.
 */
@Controller
class FigureDoor {

    private static final MediaType SVG = MediaType.valueOf("image/svg+xml");
    private static final CacheControl FOR_GOOD =
            CacheControl.maxAge(Duration.ofDays(365)).cachePublic().immutable();

    private final DrawnFigures figures;

    FigureDoor(DrawnFigures figures) {
        this.figures = figures;
    }

    @GetMapping("/figure/{digest}/{name}.svg")
    ResponseEntity<byte[]> picture(
            @PathVariable String digest,
            @PathVariable String name,
            @RequestHeader(name = HttpHeaders.ACCEPT_ENCODING, defaultValue = "") String accepts) {
        var found = figures.find(name).filter(packed -> packed.digest().equals(digest));
        if (found.isEmpty()) {
            return ResponseEntity.notFound().build();
        }
        var answer = ResponseEntity.ok().contentType(SVG).cacheControl(FOR_GOOD).varyBy(HttpHeaders.ACCEPT_ENCODING);
        return accepts.contains("gzip")
                ? answer.header(HttpHeaders.CONTENT_ENCODING, "gzip")
                        .body(found.get().gzip())
                : answer.body(found.get().unpacked());
    }
}
