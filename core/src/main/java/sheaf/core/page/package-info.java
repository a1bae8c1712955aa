/** Places and papers, in millimetres from a page's top-left corner, x to the right, y down. */
package sheaf.core.page;
