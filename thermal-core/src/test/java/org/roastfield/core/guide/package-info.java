/** The documents against the code: examples, cited equations, literature, links. */
@NullMarked
package org.roastfield.core.guide;

import org.jspecify.annotations.NullMarked;
