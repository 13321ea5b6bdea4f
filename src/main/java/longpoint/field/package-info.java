/** What the crew works by, and what it finds when it holds the work against the site. */
package longpoint.field;
