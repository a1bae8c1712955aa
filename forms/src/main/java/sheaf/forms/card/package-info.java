/** The parts of a finished card; {@link sheaf.forms.card.CardPage} puts them together. */
package sheaf.forms.card;
