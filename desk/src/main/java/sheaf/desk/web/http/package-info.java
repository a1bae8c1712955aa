/**
 * The web server without anything of bows: requests and replies, who may ask what, and what is
 * taken in. {@link sheaf.desk.web.http.WebServer} is the way in; every request passes its checks,
 * and every reply gets its headers, in that one place.
 */
package sheaf.desk.web.http;
