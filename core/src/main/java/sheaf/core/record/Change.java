package sheaf.core.record;

import java.util.Optional;

/**
 * What the technician altered before a sheet was shot.
 *
 * @param beforeSheet the number of that sheet
 * @param what was altered: {@code rest}
 * @param way it went, such as {@code left}; empty when it was not said
 * @param amount how much, with its unit; empty when it was not said
 */
public record Change(int beforeSheet, Taken what, Optional<Taken> way, Optional<Taken> amount) {}
