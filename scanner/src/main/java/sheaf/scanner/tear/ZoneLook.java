package sheaf.scanner.tear;

import java.util.Optional;
import sheaf.core.layout.Zone;

/**
 * What a look at a zone brought.
 *
 * @param zone looked at
 * @param tear the likeliest one; empty where no end was seen
 * @param spot how much the cells speak for a tear where the zone's largest spot is; 0 without one
 */
record ZoneLook(Zone zone, Optional<FoundTear> tear, double spot) {}
