package sheaf.core.layout;

import java.util.Optional;
import sheaf.core.measure.Distance;
import sheaf.core.page.MmRect;

/**
 * A numbered part of a target that is shot at and judged by itself.
 *
 * @param number printed in it, from 1; the fields that belong to it end in it
 * @param rect where its arrows are meant to land
 * @param distance printed beside it; empty when none is or when it is written in by hand
 */
public record Zone(int number, MmRect rect, Optional<Distance> distance) {}
