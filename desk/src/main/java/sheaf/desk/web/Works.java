package sheaf.desk.web;

import java.security.SecureRandom;
import java.time.Clock;
import java.util.function.Supplier;
import sheaf.desk.home.HomeFolder;
import sheaf.desk.intake.FlatSource;
import sheaf.desk.intake.PageSource;
import sheaf.desk.profile.ShopProfile;
import sheaf.desk.store.StorePlace;

/**
 * What the pages work with.
 *
 * @param home folder for what is being taken in, and for the log
 * @param place of the store
 * @param clock the time
 * @param random for names, keys and cookies
 * @param profile of the shop, read anew each time
 * @param reader of sheets
 * @param flat flattens sheets to look at
 * @param program this version
 */
public record Works(
    HomeFolder home,
    StorePlace place,
    Clock clock,
    SecureRandom random,
    Supplier<ShopProfile> profile,
    PageSource reader,
    FlatSource flat,
    String program) {}
