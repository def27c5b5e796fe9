package org.hearthway.shell;

import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.boot.web.error.ErrorAttributeOptions;
import org.springframework.boot.web.servlet.error.DefaultErrorAttributes;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.WebRequest;

/** What is told of a failure outside the drawn pages: the status and, when it is ours, a reference number. */
@Component
class PlainTrouble extends DefaultErrorAttributes {

    private static final int OURS = 500;

    @Override
    public Map<String, Object> getErrorAttributes(WebRequest request, ErrorAttributeOptions options) {
        var told = new LinkedHashMap<String, Object>();
        var status = super.getErrorAttributes(request, options).get("status");
        told.put("status", status);
        var failure = getError(request);
        if (status instanceof Integer code && code >= OURS && failure != null) {
            told.put("reference", Trouble.note(failure));
        }
        return told;
    }
}
