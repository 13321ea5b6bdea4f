/**
 * The editing core: what the user points at and types becomes a new plan. No screen is needed.
 *
 * <p>The path of one edit: an {@link longpoint.editor.Event} in plan coordinates goes to the {@link
 * longpoint.editor.ToolRunner}, which hands it with a {@link longpoint.editor.Scene} to the active
 * {@link longpoint.editor.ToolState}; the state answers with a {@link longpoint.editor.Step}: the
 * next state and an {@link longpoint.editor.Outcome}. Only the runner touches the {@link
 * longpoint.editor.Document}. The window then asks the runner what to show: the plan, the {@link
 * longpoint.editor.Overlay}, the status sentence and the typed entry.
 */
package longpoint.editor;
