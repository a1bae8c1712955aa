/** Pictures that show a person what was read. */
package sheaf.scanner.proof;
