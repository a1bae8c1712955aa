package sheaf.scanner.hole;

import sheaf.core.page.MmPoint;

/**
 * A blade's slit, on the page as designed.
 *
 * @param rim where it leaves the shaft's circle
 * @param tip where it ends
 */
public record SlitLine(MmPoint rim, MmPoint tip) {}
