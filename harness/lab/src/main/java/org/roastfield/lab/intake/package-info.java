/**
 * Takes delimited logs of any layout in: proposes what the columns are, with reasons; reads them
 * row by row; says what was changed, what was set aside and what looks wrong.
 */
@NullMarked
package org.roastfield.lab.intake;

import org.jspecify.annotations.NullMarked;
