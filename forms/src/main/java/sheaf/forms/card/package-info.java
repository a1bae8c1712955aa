/**
 * The parts of a finished card: {@link sheaf.forms.card.CardPages} puts them together, {@link
 * sheaf.forms.card.WalletTag} those of a tag.
 */
package sheaf.forms.card;
