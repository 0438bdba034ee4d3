package org.cupwright.app.store;

import java.sql.SQLException;

/** Carries an error of the database out of a store's method to the folder, which knows what to say about it. */
public final class SqlFailure extends RuntimeException {
    private static final long serialVersionUID = 1;

    SqlFailure(SQLException error) {
        super(error);
    }

    public SQLException error() {
        return (SQLException) getCause();
    }
}
