/**
 * Figures for hoisting a section built on the ground: which trusses it takes ({@code Picked}), what
 * it weighs piece by piece and where it balances ({@code Weighing}), where it hangs and what each
 * line carries ({@code Hanging}, {@code Tension}). Aids for a qualified rigger, never a lift plan.
 */
package longpoint.field.lift;
