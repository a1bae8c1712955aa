package sheaf.desk.watch;

import sheaf.desk.store.Scans;

/** Tells a person or a program what happens; called by several threads, one at a time. */
public interface Teller {

  /** A scan was read, and is filed. */
  void filed(Scans.Filed scan);

  /** Something that a person should know, in a sentence. */
  void say(String sentence);
}
