package org.hearthway.shell;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.ErrorParameter;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.HasErrorParameter;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.server.HttpStatusCode;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import org.hearthway.words.Words;

/** The page for an address that leads nowhere: as {@link NotAvailablePage}, and never a list of routes. */
@AnonymousAllowed
class NotFoundPage extends Div implements HasErrorParameter<NotFoundException>, HasDynamicTitle {

    private final transient Words words;

    NotFoundPage(Words words) {
        this.words = words;
    }

    @Override
    public int setErrorParameter(BeforeEnterEvent event, ErrorParameter<NotFoundException> parameter) {
        NotAvailablePage.show(this, words);
        return HttpStatusCode.NOT_FOUND.getCode();
    }

    @Override
    public String getPageTitle() {
        return NotAvailablePage.title(words);
    }
}
