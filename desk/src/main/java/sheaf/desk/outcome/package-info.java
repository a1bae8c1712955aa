/**
 * How a command ends: {@link sheaf.desk.outcome.ExitStatus} for programs, {@link
 * sheaf.desk.outcome.Trouble} with one sentence for people.
 */
package sheaf.desk.outcome;
