/**
 * Scores on cooks that were not fitted: each in turn is kept aside, its cooker's profile comes from
 * the others, and what was said of it is held against what came.
 */
@NullMarked
package org.roastfield.lab.heldout;

import org.jspecify.annotations.NullMarked;
