/** Drawing on PDF pages in millimetres: pen, typeface, QR symbols. */
package sheaf.forms.draw;
