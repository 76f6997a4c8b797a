package total

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/table"
)

// saysTotal reports whether a row says in any of its cells that it is a total, how many or how much in another, and no end, no size and
// no colour of a wire:
//
//	Wire | Net  | From | To   | mm² | Length | Strip
//	1    | Lamp | J1-1 | L1-1 | 1   | 400    | 5
//	2    | Horn | J1-2 | H1-1 | 1   | 300    | 5
//	2 wires     |      |      |     | total  | 700
func saysTotal(b *shape.Block, r table.Row) bool {
	at := slices.IndexFunc(r.Cells, isTotalAlone)
	if at < 0 {
		return false // most rows
	}
	number, id := false, false
	for i, c := range r.Cells {
		if c == "" || i == at {
			continue
		}
		if i < len(b.Cols) {
			switch b.Cols[i].Field {
			case name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin, name.FieldRun, name.FieldVia, name.FieldPin,
				name.FieldConnector, name.FieldDevicePin, name.FieldColour, name.FieldGauge, name.FieldStripe:
				return false
			case name.FieldWire:
				id = !strings.Contains(c, " ")
			}
		}
		number = number || strings.ContainsAny(c, "0123456789")
	}
	number = number || strings.ContainsAny(r.Cells[at], "0123456789")
	// "7 | total loss switch": a wire of that name, whose ends are left open
	named := at < len(b.Cols) && (b.Cols[at].Field == name.FieldSignal || b.Cols[at].Field == name.FieldNote)
	return number && !(id && named)
}

// isTotalAlone reports whether a cell is a word for a total, and besides numbers no more than what the total is of: "total",
// "Summe Länge", "total 14.9 m".
func isTotalAlone(cell string) bool {
	const most = 24 // bytes (no source)
	if len(cell) > most || !signoff.IsTotal(cell) && !isTotalInOne(cell) {
		return false
	}
	n := 0
	for _, w := range name.Words(table.Fold(cell)) {
		if strings.ContainsAny(w, "0123456789") || len(w) < 3 {
			continue
		}
		n++
	}
	return n <= 2
}

// isTotalInOne reports whether a cell begins with a word for a total and what it is of in one, or with another word before it:
// "Gesamtlänge", "grand total".
func isTotalInOne(cell string) bool {
	const least = 9 // bytes of the shortest of them
	if len(cell) < least || !strings.ContainsAny(cell[:1], "gGtToOsS") {
		return false // most cells
	}
	folded := table.Fold(cell)
	return slices.ContainsFunc([]string{"gesamtlange", "gesamtmenge", "gesamtsumme", "gesamtzahl", "gesamtgewicht", "grand total",
		"totallangd",
		"totallaengde", "totallengde", "totallengte", "totaallengte", "overall total", "overall length", "sum total", "sum of"},
		func(w string) bool { return strings.HasPrefix(folded, w) })
}
