/// Schools and who belongs to them: people, roles with their validity, log-ins, intakes,
/// authorisations, and the dated policy that every rule number comes from. A role grants what the
/// permissions file says and nothing else. Start reading at `Actor`.
@NullMarked
package org.groundline.school;

import org.jspecify.annotations.NullMarked;
