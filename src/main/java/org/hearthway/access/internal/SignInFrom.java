package org.hearthway.access.internal;

import jakarta.servlet.http.HttpServletRequest;
import java.io.Serializable;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.HexFormat;

/**
 * Where a sign-in comes from.
 *
 * @param device the mark of a device on which somebody has signed in before; empty for none
 * @param network it comes from: the address, of a long one the half that names the network (RFC 4291), because
 *     whoever has one has all the others in it
 */
record SignInFrom(String device, String network) implements Serializable {

    private static final long serialVersionUID = 1L;

    private static final int NETWORK_BYTES = 8;

    static SignInFrom of(HttpServletRequest request, KnownDevices devices) {
        return new SignInFrom(devices.mark(request), network(request.getRemoteAddr()));
    }

    static String network(String address) {
        if (!address.contains(":")) {
            return address;
        }
        try {
            var bytes = InetAddress.getByName(address).getAddress();
            return bytes.length > NETWORK_BYTES ? HexFormat.of().formatHex(bytes, 0, NETWORK_BYTES) : address;
        } catch (UnknownHostException notAnAddress) {
            return address;
        }
    }
}
