/**
 * What is done with jobs, whoever asks for it: the command line and the pages in the browser print,
 * ask and advise by the same code.
 */
package sheaf.desk.work;
