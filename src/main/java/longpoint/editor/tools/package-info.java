/** The tools: each a set of small states named for the gesture. Start from {@link Tools}. */
package longpoint.editor.tools;
