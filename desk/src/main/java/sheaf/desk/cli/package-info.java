/**
 * The command line: {@link sheaf.desk.cli.Main} starts it, each command parses its words, calls one
 * service and prints.
 */
package sheaf.desk.cli;
