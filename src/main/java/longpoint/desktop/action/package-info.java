/**
 * The one catalogue of everything the window can do. A {@link longpoint.desktop.action.Task} has an
 * id; its name and its sentence come from the texts under that id. Menus, tool strip, keys, the
 * finder and the page of keys are all made from the {@link longpoint.desktop.action.Catalogue}.
 */
package longpoint.desktop.action;
