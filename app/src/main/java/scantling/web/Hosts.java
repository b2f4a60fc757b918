package scantling.web;

import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/**
 * The names under which this server may be asked for. A request that names another came by a name that somebody else
 * made point here, and is refused.
 */
final class Hosts {
    /** Browsers leave this one out. */
    private static final int USUAL_PORT = 80;

    private final Set<String> names;
    private final List<String> onNetwork;

    private Hosts(Set<String> names, List<String> onNetwork) {
        this.names = names;
        this.onNetwork = onNetwork;
    }

    /** Of this machine. @param lan whether its addresses on the workshop's network count too */
    static Hosts ofThisMachine(boolean lan) {
        Set<String> names = new TreeSet<>(Set.of("localhost", "127.0.0.1", "[::1]"));
        List<String> addresses = lan ? addresses() : List.of();
        names.addAll(addresses);
        return new Hosts(names, addresses);
    }

    /** Numeric addresses only: a name could be made to point anywhere. Those of a private network stand first. */
    private static List<String> addresses() {
        List<InetAddress> all = new ArrayList<>();
        try {
            for (NetworkInterface card : Collections.list(NetworkInterface.getNetworkInterfaces())) {
                if (card.isUp() && !card.isLoopback()) {
                    all.addAll(Collections.list(card.getInetAddresses()));
                }
            }
        } catch (SocketException unknown) {
            return List.of();
        }
        return all.stream()
                .filter(address -> !address.isLinkLocalAddress() && address.getAddress().length == 4)
                .sorted((a, b) -> Boolean.compare(b.isSiteLocalAddress(), a.isSiteLocalAddress()))
                .map(InetAddress::getHostAddress)
                .toList();
    }

    /** Where a phone on the workshop's network finds this machine, the likeliest first. */
    List<String> onNetwork() {
        return onNetwork;
    }

    /** Whether a Host header names this server. */
    boolean knows(String host, int port) {
        String name = host.toLowerCase(Locale.ROOT);
        String end = ":" + port;
        boolean usual = port == USUAL_PORT && names.contains(name);
        return usual || (name.endsWith(end) && names.contains(name.substring(0, name.length() - end.length())));
    }
}
