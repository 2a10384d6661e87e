/** Plans on trial: made-up cooks that follow them on cookers of which the plans know little. */
@NullMarked
package org.roastfield.lab.trial;

import org.jspecify.annotations.NullMarked;
