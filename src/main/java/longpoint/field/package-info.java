/**
 * What the crew works by, what it finds when it holds the work against the site, and {@code
 * SiteAids}: figures for what can hurt people.
 */
package longpoint.field;
