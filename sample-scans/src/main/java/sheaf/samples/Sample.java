package sheaf.samples;

import sheaf.samples.scene.Truth;

/**
 * A made scan.
 *
 * @param file its content
 * @param truth what is known of it
 */
public record Sample(byte[] file, Truth truth) {}
