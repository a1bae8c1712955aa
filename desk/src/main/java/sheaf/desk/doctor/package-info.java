/** Looks whether this computer has all that Sheaf needs: {@link sheaf.desk.doctor.Doctor}. */
package sheaf.desk.doctor;
