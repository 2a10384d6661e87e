/**
 * Plans on paper: clock times with their zone, what to buy, salt, the words of a timetable, and a
 * calendar file of it.
 */
@NullMarked
package org.roastfield.lab.plan;

import org.jspecify.annotations.NullMarked;
