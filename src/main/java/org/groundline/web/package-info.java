/// Pages and JSON: the only place that knows HTTP. A request becomes a value, a door is asked, the
/// answer becomes a page or a document; rules live behind the doors. Start reading at `WebServer`.
@NullMarked
package org.groundline.web;

import org.jspecify.annotations.NullMarked;
