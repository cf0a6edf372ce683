/// The PostgreSQL under everything: an embedded one started here, or one given by address; its
/// migrations; and the only way to a transaction. Inside a transaction only the rows of the school
/// it was opened for exist. Start reading at `Database`.
@NullMarked
package org.groundline.database;

import org.jspecify.annotations.NullMarked;
