/**
 * What people said: corrections and confirmations of what the machine read. {@link
 * sheaf.core.answer.Answers} lays them over readings, which themselves never change, and {@link
 * sheaf.core.answer.History} tells how each value came to be.
 */
package sheaf.core.answer;
