/** Rules about the code itself. */
@NullMarked
package org.roastfield.core.architecture;

import org.jspecify.annotations.NullMarked;
