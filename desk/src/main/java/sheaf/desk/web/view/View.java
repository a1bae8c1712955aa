package sheaf.desk.web.view;

/**
 * What every page of the desk has around it.
 *
 * @param title of the page
 * @param section that is marked in the menu: the path of its entry, or empty
 * @param token that forms carry
 * @param initials of the person at the desk; empty when not said
 * @param shop its name; empty when it has none
 * @param guarded whether a passphrase was asked for, so that one can leave
 */
public record View(
    String title, String section, String token, String initials, String shop, boolean guarded) {}
