/** What the notebooks in the repository's folder {@code notebooks} call beside the library. */
@NullMarked
package org.roastfield.lab.notebook;

import org.jspecify.annotations.NullMarked;
