package org.groundline.database;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;

import org.jooq.DSLContext;
import org.jooq.ExecuteListener;
import org.jooq.SQLDialect;
import org.jooq.conf.Settings;
import org.jooq.exception.DataAccessException;
import org.jooq.impl.DSL;
import org.jooq.impl.DefaultConfiguration;

import java.util.Collection;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;

/// The only way to a transaction. Each is opened for one school (or, by the writer of answers, for
/// several), and row-level security shows it the rows of that school alone.
public final class Database implements AutoCloseable {
    private static final String SCHOOLS = "groundline.schools";
    private static final int CONNECTIONS = 24;
    private static final int IDLE_CONNECTIONS = 2;

    private final HikariDataSource pool;
    private final DSLContext sql;

    private Database(HikariDataSource pool, ExecuteListener... listeners) {
        this.pool = pool;
        var configuration = new DefaultConfiguration();
        configuration.set(pool);
        configuration.set(SQLDialect.POSTGRES);
        configuration.set(new Settings().withExecuteLogging(false));
        configuration.set(listeners);
        this.sql = DSL.using(configuration);
    }

    /// Opens a pool of connections as the server's own role.
    ///
    /// @param listeners told of every statement; the tests hold a log of them
    public static Database open(Address address, ExecuteListener... listeners) {
        var config = new HikariConfig();
        config.setJdbcUrl(address.url());
        config.setUsername(address.user());
        config.setPassword(address.password());
        config.setMaximumPoolSize(CONNECTIONS);
        config.setMinimumIdle(IDLE_CONNECTIONS);
        config.setAutoCommit(true);
        config.setPoolName("groundline");
        config.addDataSourceProperty("reWriteBatchedInserts", "true");
        config.addDataSourceProperty("ApplicationName", "groundline");
        return new Database(new HikariDataSource(config), listeners);
    }

    /// Runs work in one transaction that sees one school's rows; any exception rolls it back.
    public <T> T inSchool(SchoolId school, Function<DSLContext, T> work) {
        return transaction(school.value().toString(), work);
    }

    /// As [#inSchool], for work without a result.
    public void doInSchool(SchoolId school, Consumer<DSLContext> work) {
        inSchool(
                school,
                tx -> {
                    work.accept(tx);
                    return true;
                });
    }

    /// Runs work that commits the rows of several schools at once. For the writer of answers only.
    public <T> T inSchools(Collection<SchoolId> schools, Function<DSLContext, T> work) {
        String list =
                schools.stream().map(s -> s.value().toString()).collect(Collectors.joining(","));
        return transaction(list, work);
    }

    /// Runs work on the few tables that belong to no school; rows of schools are invisible to it.
    public <T> T outsideSchools(Function<DSLContext, T> work) {
        return transaction("", work);
    }

    private <T> T transaction(String schools, Function<DSLContext, T> work) {
        try {
            return sql.transactionResult(
                    configuration -> {
                        DSLContext tx = configuration.dsl();
                        tx.execute("select set_config('" + SCHOOLS + "', ?, true)", schools);
                        return work.apply(tx);
                    });
        } catch (DataAccessException e) {
            throw Violation.translated(e);
        }
    }

    @Override
    public void close() {
        pool.close();
    }
}
