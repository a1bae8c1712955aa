/**
 * Where everything is on a sheet. {@link sheaf.core.layout.Layouts} finds a layout by its name; the
 * register marks alone tell a sheet's {@link sheaf.core.layout.MarkFamily}.
 */
package sheaf.core.layout;
