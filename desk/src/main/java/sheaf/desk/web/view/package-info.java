/** What templates are told: plain records without any way to the store. */
package sheaf.desk.web.view;
