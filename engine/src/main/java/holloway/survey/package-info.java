/**
 * From tape measures to positions: one adjusted network, levels, faces, walls out of the gaps, and
 * space nothing accounts for.
 */
package holloway.survey;
