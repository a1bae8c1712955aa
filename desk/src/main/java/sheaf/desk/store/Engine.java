package sheaf.desk.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import sheaf.desk.outcome.Trouble;

/** The database behind a store: what differs between those that it may be. */
interface Engine {

  /** Whether there is a store; where one is kept by a server, it is taken to be. */
  boolean isThere();

  /**
   * A connection on which what was committed is on the disk; the tables are brought up to date
   * first, and made where there are none.
   *
   * @throws Trouble when there is no store to be had
   */
  Connection connect();

  /**
   * Another connection, which sees all as it is at this moment for as long as it is open, keeps
   * nobody from writing, and is in a transaction.
   */
  Connection snapshot();

  /** What the database itself finds wrong with what it holds, a line each. */
  List<String> faults(Connection connection) throws SQLException;

  /** Where the files that were read are kept. */
  Originals originals(Connection connection);

  /** What is put behind a query so that others wait for the rows it finds; may be empty. */
  String keepingOthersOut();

  /**
   * Does something with a scan that nobody else has in hand: the one that waits longest of those
   * that were tried least, so that one at which readers die keeps none of the others waiting.
   * Others leave it alone until this is done; should this process die before, they may take it.
   *
   * @param work on a scan, by its digest
   * @return what the work gave; empty when no scan is left
   */
  <T> Optional<T> withNextScan(Session session, OnScan<T> work) throws SQLException;

  /** Something to do with a scan. */
  @FunctionalInterface
  interface OnScan<T> {
    T run(String digest) throws SQLException;
  }

  /** Why the database would not do something, as a sentence. */
  Trouble trouble(SQLException e);
}
