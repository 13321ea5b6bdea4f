/**
 * What the program says, in every language it ships. A stage keeps what it has to say as a {@link
 * longpoint.wording.Phrase}: a key and figures and names, no sentence yet. Whoever shows it asks
 * for the words of one {@link longpoint.wording.Language}; nothing here looks at the machine's own,
 * except {@link longpoint.wording.Language#ofDesktop}, which the window asks.
 */
package longpoint.wording;
