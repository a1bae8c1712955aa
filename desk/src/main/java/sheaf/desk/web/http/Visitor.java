package sheaf.desk.web.http;

/**
 * Who asks.
 *
 * @param token that every form must carry, so that no other site's form is taken for ours
 * @param mayEnter whether the passphrase was given, where one is asked for
 * @param initials of the person, for what they answer; empty when not said
 */
public record Visitor(String token, boolean mayEnter, String initials) {}
