package org.hearthway.access.internal;

import jakarta.servlet.http.HttpServletRequest;
import java.io.Serializable;

/**
 * Where a sign-in comes from.
 *
 * @param device the mark of a device on which somebody has signed in before; empty for none
 * @param address of the network it comes from
 */
record SignInFrom(String device, String address) implements Serializable {

    private static final long serialVersionUID = 1L;

    static SignInFrom of(HttpServletRequest request, KnownDevices devices) {
        return new SignInFrom(devices.mark(request), request.getRemoteAddr());
    }
}
