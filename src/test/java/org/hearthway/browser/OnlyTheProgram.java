package org.hearthway.browser;

import java.io.IOException;
import org.springframework.boot.context.TypeExcludeFilter;
import org.springframework.core.type.classreading.MetadataReader;
import org.springframework.core.type.classreading.MetadataReaderFactory;

/** Keeps what stands in the test folders out of the program that a walk starts. */
class OnlyTheProgram extends TypeExcludeFilter {

    @Override
    public boolean match(MetadataReader type, MetadataReaderFactory factory) throws IOException {
        return type.getResource().getURL().getPath().contains("/test-classes/");
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof OnlyTheProgram;
    }

    @Override
    public int hashCode() {
        return OnlyTheProgram.class.hashCode();
    }
}
