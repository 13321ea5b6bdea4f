/**
 * Makes a picture file fit to lie beneath a plan: PNG and JPEG, and the first page of a PDF, each
 * turned upright, made small enough for a plan file and packed again. A file may come from a
 * stranger: what it says of its size is looked at before anything is unpacked.
 */
package longpoint.picture;
