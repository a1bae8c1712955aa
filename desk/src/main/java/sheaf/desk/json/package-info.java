/**
 * Readings and results as JSON: {@link sheaf.desk.json.PageJson} for a page, {@link
 * sheaf.desk.json.JobJson} for a job, {@link sheaf.desk.json.RecordJson} for a bow's record. What
 * is written here is kept for years, so keys are only ever added.
 */
package sheaf.desk.json;
