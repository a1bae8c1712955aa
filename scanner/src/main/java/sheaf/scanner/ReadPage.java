package sheaf.scanner;

import java.util.Optional;
import sheaf.core.reading.PageReading;

/**
 * One page of a file, read.
 *
 * @param reading what it said
 * @param proof a JPEG picture of the flattened sheet with what was found drawn over it; empty when
 *     it was not asked for or there is no sheet to show
 */
public record ReadPage(PageReading reading, Optional<byte[]> proof) {}
