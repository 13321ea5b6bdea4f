/**
 * Plans to files and back.
 *
 * <p>Opening: bytes are decoded and parsed with the place of every value ({@code JsonText}), then
 * each value is checked and made into a plan ({@code PlanReader}). Saving: the plan is written in a
 * fixed layout ({@code PlanWriter}) and put in place whole or not at all ({@code SafeSave}). {@link
 * longpoint.planfile.Recovery} keeps drafts of what is not yet saved. The format is told in {@code
 * docs/plan-format.md} and {@code docs/plan.schema.json}.
 */
package longpoint.planfile;
