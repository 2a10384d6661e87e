/** Fires: what a log of its gas says of a pit, and what a pit needs for a cook. */
@NullMarked
package org.roastfield.lab.pit;

import org.jspecify.annotations.NullMarked;
