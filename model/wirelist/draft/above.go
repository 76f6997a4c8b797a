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

// NamedFarAbove is the connector that all wires of the table above a row end at, each in a cavity that the list names, where the list names
// none of the cavities that they start at; nil where they end at several, or the list names those.
//
//	Wind vane
//	- green -> B1 terminal 7
//	- brown -> B1 terminal 8
//	Terminal 10 free.
func (im *Importer) NamedFarAbove(at table.Place) *Term {
	var last *Item
	for _, it := range im.Items {
		if it.Place.File == at.File && it.Place.Sheet == at.Sheet && it.Place.Row < at.Row &&
			(last == nil || it.Place.Row > last.Place.Row) {
			last = it
		}
	}
	if last == nil {
		return nil
	}
	of := last.To.Term
	for _, it := range im.Items {
		if it.Place.File != at.File || it.Place.Sheet != at.Sheet || it.Block != last.Block {
			continue
		}
		named := it.From.Term == nil || it.From.Pin != "" && !it.From.Term.Numbered
		if named || of == nil || it.To.Term != of || it.To.Pin == "" || of.Numbered {
			return nil
		}
	}
	return of
}
