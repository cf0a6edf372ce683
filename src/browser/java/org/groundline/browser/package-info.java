/// Walks through the pages in a real Chromium, as each kind of person walks. Every page met is
/// checked for accessibility, for errors in the browser's console and for anything the content
/// policy stopped. Start reading at `WalkTest`.
@NullMarked
package org.groundline.browser;

import org.jspecify.annotations.NullMarked;
