/**
 * The plan's unit, and lengths and slopes as people type and read them. Figures convert here, at
 * the edge; everywhere else a length is a plain number in the plan's unit.
 *
 * <p>Reading: {@link longpoint.units.LengthEntry} and {@link longpoint.units.SlopeEntry}; what
 * could mean two things is refused with an {@link longpoint.units.EntryException} that spells out
 * both. Writing: {@link longpoint.units.LengthText}, {@link longpoint.units.SlopeText} and {@link
 * longpoint.units.FigureText}.
 */
package longpoint.units;
