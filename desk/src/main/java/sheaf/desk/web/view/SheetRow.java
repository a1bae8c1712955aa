package sheaf.desk.web.view;

/**
 * A paper of a job.
 *
 * @param number printed on it
 * @param kind of sheet; empty for one that was not read yet
 * @param state read, check or missing
 * @param found on it, in a few words
 */
public record SheetRow(int number, String kind, String state, String found) {}
