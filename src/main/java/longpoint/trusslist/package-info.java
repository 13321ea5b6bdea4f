/**
 * Trusses out of the lists that suppliers send: separated values of any kind, in English or French,
 * in any notation. Steps: text ({@link longpoint.trusslist.Cells}), columns ({@link
 * longpoint.trusslist.Heads}), rows ({@link longpoint.trusslist.TrussList}).
 */
package longpoint.trusslist;
