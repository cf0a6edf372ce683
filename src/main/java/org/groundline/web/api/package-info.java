/// Everything the pages do, for programs: JSON under `/api/v1`, as the OpenAPI document beside it
/// describes. A request is read strictly into a record, the doors decide, and an answer is a record
/// whose fields wear their units; nothing about a key is in any of them before the doors give it
/// out. Start reading at `Api`, then `ApiRoutes`.
@NullMarked
package org.groundline.web.api;

import org.jspecify.annotations.NullMarked;
