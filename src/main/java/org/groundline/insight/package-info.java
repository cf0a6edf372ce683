/// What the answers say about teaching: pass rates by topic. A figure counts different students in
/// their first counted sitting, shows its uncertainty, and stays silent where too few have
/// answered. Start reading at `PassRates`.
@NullMarked
package org.groundline.insight;

import org.jspecify.annotations.NullMarked;
