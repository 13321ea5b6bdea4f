/**
 * Sheets of paper on the screen, on a printer and on the clipboard: the same marks of the same
 * pages that the files hold, painted by one more visitor.
 */
package longpoint.desktop.paper;
