/** How much salt a cut of a cook file takes, and how early. */
@NullMarked
package org.roastfield.lab.salting;

import org.jspecify.annotations.NullMarked;
