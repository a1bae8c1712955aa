/**
 * What Sheaf keeps: the files it was given, byte for byte, and every reading ever made of their
 * pages. {@link sheaf.desk.store.Store} is the entry point.
 */
package sheaf.desk.store;
