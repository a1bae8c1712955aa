/**
 * How a job and its papers are named: {@link sheaf.core.job.JobId} on every paper, {@link
 * sheaf.core.job.SheetCode} inside the printed codes, {@link sheaf.core.job.RecordKey} behind the
 * customer's link.
 */
package sheaf.core.job;
