/** Tears of arrows that fly crooked: their shape, how they are painted, and sheets full of them. */
package sheaf.samples.tear;
