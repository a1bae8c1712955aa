/**
 * The folder where Sheaf keeps what it was given: {@link sheaf.desk.home.HomeFolder}; and what
 * older settings in it say: {@link sheaf.desk.home.Settings}.
 */
package sheaf.desk.home;
