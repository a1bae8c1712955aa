/** Measures, on made holes, how rims look: the weights with which the scanner finds axes. */
package sheaf.samples.rim;
