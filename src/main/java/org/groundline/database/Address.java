package org.groundline.database;

/// Where a PostgreSQL answers and as whom to log in.
///
/// @param url a JDBC address, `jdbc:postgresql://host:port/name`
/// @param user the database role
/// @param password its password; never printed
public record Address(String url, String user, String password) {
    @Override
    public String toString() {
        return user + " at " + url;
    }
}
