package org.hearthway.family;

import com.vaadin.flow.component.Component;
import java.util.Optional;

/**
 * One part of what goes on alongside the path, such as medicines. Each bean of this type is a section of that page; their
 * {@link org.springframework.core.annotation.Order} says which comes first.
 */
interface AlongsideSection {

    /** The section with its title; empty when there is nothing of it to show to this reader. */
    Optional<Component> draw(Reader reader);
}
