package sheaf.desk.web.http;

import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * The names by which this server may be called. A page of another site whose name was made to lead
 * here asks under that name, and gets nothing.
 *
 * @param names in small letters, without ports
 */
public record Hosts(Set<String> names) {

  /** Copies the set. */
  public Hosts {
    names = Set.copyOf(names);
  }

  /** This computer only. */
  public static Hosts loopback() {
    return new Hosts(Set.of("localhost", "127.0.0.1", "[::1]"));
  }

  /** This computer under each of its names and addresses, and under others that it is known by. */
  public static Hosts ofThisComputer(Collection<String> others) {
    Set<String> names = new HashSet<>(loopback().names());
    others.forEach(other -> names.add(other.toLowerCase(Locale.ROOT)));
    try {
      String own = InetAddress.getLocalHost().getHostName().toLowerCase(Locale.ROOT);
      names.add(own);
      names.add(own + ".local");
    } catch (UnknownHostException e) {
      // A computer without a name is called by its addresses.
      names.add("localhost");
    }
    addresses().forEach(address -> names.add(written(address)));
    return new Hosts(names);
  }

  /** The addresses of this computer that others may reach it by. */
  public static List<InetAddress> addresses() {
    try {
      return NetworkInterface.networkInterfaces()
          .flatMap(NetworkInterface::inetAddresses)
          .filter(address -> !address.isLoopbackAddress() && !address.isLinkLocalAddress())
          .toList();
    } catch (SocketException e) {
      return List.of();
    }
  }

  /** An address as it stands in a web address. */
  public static String written(InetAddress address) {
    String text = address.getHostAddress().replaceFirst("%.*", "");
    return text.contains(":") ? "[" + text + "]" : text;
  }

  boolean include(String host) {
    String name = host.toLowerCase(Locale.ROOT).replaceFirst(":\\d{1,5}$", "");
    return names.contains(name);
  }
}
