package draft

import "contralay/model/wirelist/table"

// ConnectorAbove is the connector that all wires of the table above a row start at, or of the whole sheet where nothing stands above; nil
// where they start at several.
func (im *Importer) ConnectorAbove(at table.Place) *Term {
	var last *Item
	for _, it := range im.Items {
		if it.Place.File == at.File && it.Place.Sheet == at.Sheet && it.Place.Row < at.Row &&
			(last == nil || it.Place.Row > last.Place.Row) {
			last = it
		}
	}
	var of *Term
	for _, it := range im.Items {
		switch {
		case it.Place.File != at.File || it.Place.Sheet != at.Sheet || last != nil && it.Block != last.Block:
		case it.From.Term == nil || of != nil && of != it.From.Term:
			return nil
		default:
			of = it.From.Term
		}
	}
	return of
}
