/**
 * The door for the browser: a server on this machine alone, the page, and the routes that the page asks.
 * It guards, translates and never computes.
 */
@org.jspecify.annotations.NullMarked
package midplate.web;
