/** What the networks that Sheaf teaches have in common. */
package sheaf.samples.learn;
