/**
 * Scores on cooks that were not fitted: each in turn is kept aside, its cooker's profile comes from
 * the others, and what was said of it is held against what came. A log may be replayed by a profile
 * that is already there.
 */
@NullMarked
package org.roastfield.lab.heldout;

import org.jspecify.annotations.NullMarked;
