/**
 * The folder where Sheaf keeps what it was given, and the settings in it: {@link
 * sheaf.desk.home.HomeFolder}, {@link sheaf.desk.home.Settings}.
 */
package sheaf.desk.home;
