/**
 * Readings and results as plain text for a person: {@link sheaf.desk.report.PageTable} for what was
 * read, {@link sheaf.desk.report.JobReport} for what it came to.
 */
package sheaf.desk.report;
