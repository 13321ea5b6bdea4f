/**
 * The window. {@link longpoint.desktop.DesktopApp} opens it; {@code canvas} is the sheet one draws
 * on, {@code panel} what stands around it, {@code action} the one catalogue of everything the
 * window can do. A {@link longpoint.desktop.Job} joins the document, its file and the engine, which
 * works off the event thread. Everything else here belongs to the event thread.
 */
package longpoint.desktop;
