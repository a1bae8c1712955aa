/**
 * The desk in the browser. {@link sheaf.desk.web.DeskSite} says which path leads to which page;
 * each page gathers what is known in a record of {@code sheaf.desk.web.view} and a template of the
 * same name writes it. Nothing here computes: results come from {@code core}, as on the command
 * line.
 */
package sheaf.desk.web;
