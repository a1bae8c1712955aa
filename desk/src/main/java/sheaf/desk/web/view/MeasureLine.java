package sheaf.desk.web.view;

/**
 * A measure of the bow; texts are empty where nobody measured.
 *
 * @param label what a person calls it
 * @param found as the bow came
 * @param left as it went
 * @param how it was taken, in a word
 */
public record MeasureLine(String label, String found, String left, String how) {}
