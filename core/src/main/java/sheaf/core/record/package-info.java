/**
 * All that is known of a bow over its visits, as its finished card carries it away. {@link
 * sheaf.core.record.BowRecord} is the entry point, {@link sheaf.core.record.RecordOfSheets} makes
 * one from a job's papers, and {@code record.schema.json} beside it in the resources describes its
 * JSON.
 */
package sheaf.core.record;
