/**
 * The shop profile: one commented file in which a shop says once who it is and what it wants.
 * {@link sheaf.desk.profile.ProfileInForce} finds it, {@link sheaf.desk.profile.ProfileFile} reads
 * and checks it, {@link sheaf.desk.profile.NewProfile} writes one to fill in.
 */
package sheaf.desk.profile;
