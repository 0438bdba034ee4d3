package org.cupwright.app.people;

import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.regex.Pattern;

/** What of an address tells one household from another: all of IPv4, the first 64 bits of IPv6 (RFC 4291). */
final class AddressPart {
    private static final Pattern IPV6 = Pattern.compile("\\[?([0-9A-Fa-f:.]*:[0-9A-Fa-f:.]*)(?:%\\w+)?]?");
    private static final int PREFIX_BYTES = 8;
    private static final int LONGEST = 100;

    private AddressPart() {}

    /** Of what is no address, the text itself. */
    static String of(String address) {
        if (address.length() > LONGEST) {
            return address.substring(0, LONGEST);
        }
        var matcher = IPV6.matcher(address);
        if (!matcher.matches()) {
            return address;
        }
        try { // digits and colons alone: no name is asked for
            InetAddress read = InetAddress.getByName("[" + matcher.group(1) + "]");
            return read instanceof Inet6Address
                    ? HexFormat.of().formatHex(Arrays.copyOf(read.getAddress(), PREFIX_BYTES))
                    : read.getHostAddress();
        } catch (UnknownHostException none) {
            return address;
        }
    }
}
