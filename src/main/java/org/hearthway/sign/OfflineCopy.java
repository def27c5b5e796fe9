package org.hearthway.sign;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HexFormat;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.stereotype.Component;

/** The version of what phones keep for the time without network: it changes when any of the kept files does. */
@Component
public class OfflineCopy {

    private static final int DIGITS = 12;

    private final String version;

    OfflineCopy() {
        try {
            var digest = MessageDigest.getInstance("SHA-256");
            for (var pattern : new String[] {"offline/*.js", "figure/*.js", "look/*.css", "look/*.svg"}) {
                var files = new PathMatchingResourcePatternResolver()
                        .getResources("classpath:/META-INF/resources/" + pattern);
                Arrays.sort(files, Comparator.comparing(Resource::getFilename));
                for (var file : files) {
                    digest.update(file.getContentAsByteArray());
                }
            }
            version = HexFormat.of().formatHex(digest.digest()).substring(0, DIGITS);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Twelve hexadecimal digits. */
    public String version() {
        return version;
    }
}
