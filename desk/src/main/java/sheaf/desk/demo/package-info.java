/** A day with Sheaf on made-up samples: {@link sheaf.desk.demo.Demo} runs it. */
package sheaf.desk.demo;
