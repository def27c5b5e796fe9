package org.hearthway.path.internal;

import java.util.List;
import java.util.Optional;
import org.hearthway.content.SignOff;
import org.hearthway.path.engine.Template;
import org.springframework.stereotype.Component;

/** The pathways as this clinic tells them: the content, with the clinic's own words where it has written some. */
@Component
class ClinicPaths {

    private final PathKind content;
    private final SignOff signOff;

    ClinicPaths(PathKind content, SignOff signOff) {
        this.content = content;
        this.signOff = signOff;
    }

    List<Template> all() {
        return content.all().stream().map(this::inTheClinicsWords).toList();
    }

    Optional<Template> find(String id) {
        return content.find(id).map(this::inTheClinicsWords);
    }

    private Template inTheClinicsWords(Template template) {
        var own = signOff.ownWords(new SignOff.Item("paths", template.id(), template.version()));
        return own.isEmpty() ? template : PathPieces.with(template, own);
    }
}
