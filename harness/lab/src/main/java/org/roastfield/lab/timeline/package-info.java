/** What a cook comes to: milestones with clock times, and the cautions that stand beside them. */
@NullMarked
package org.roastfield.lab.timeline;

import org.jspecify.annotations.NullMarked;
