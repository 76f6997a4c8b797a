// Package plugindex tells the index of the connectors of a harness from a list of its wires.
package plugindex

import (
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// Who gives each connector a sheet of its own writes an index in front of them: where the connector is, how many ways it has, how many
// are wired, on which sheet it stands. The numbers are counts and no cavities.
//
//	Connector | Where    | Ways | Cavities used | Page
//	J10       | Seat pan | 12   | 7             | 2
//	J11       | Deck     | 8    | 5             | 3

// Is reports whether a table is an index of the connectors, with counts, with how many ways each has in words, or with their sheets.
func Is(cols []shape.Column, prof []column.Profile, rows []table.Row) bool {
	return counts(cols, prof) || byWays(cols, prof, rows) || toSheets(cols, prof)
}

// counts reports whether the columns are those of such an index: the first one names the connectors, each once, at least two hold numbers
// below headings of counts or of pages, and no column holds what only wires have.
func counts(cols []shape.Column, prof []column.Profile) bool {
	if len(cols) == 0 || len(prof) < len(cols) || !namesConnectors(&cols[0], &prof[0]) {
		return false
	}
	counts := 0
	for i := 1; i < len(cols); i++ {
		c, p := &cols[i], &prof[i]
		switch {
		case p.Filled == 0:
		case c.Given || p.Ends > 0 || p.Units > 0:
			return false
		case p.All(p.Numbers) && isCount(c.Head):
			counts++
		case p.Most(p.Numbers):
			return false
		case c.Field == name.FieldFrom, c.Field == name.FieldTo, c.Field == name.FieldRun, c.Field == name.FieldGauge,
			c.Field == name.FieldPin, c.Field == name.FieldFromPin, c.Field == name.FieldToPin:
			return false
		}
	}
	return counts > 1
}

// namesConnectors reports whether a column has the designators of connectors, each once, below a word for them or for their references.
func namesConnectors(c *shape.Column, p *column.Profile) bool {
	if c.Given || p.Filled < 2 || p.Distinct < p.Filled || !p.All(p.Ids) || p.Numbers > 0 {
		return false
	}
	w := name.Words(table.Fold(c.Head))
	if len(w) == 0 || len(w) > 2 {
		return false
	}
	return slices.ContainsFunc(w, func(w string) bool {
		switch w {
		case "ref", "reference", "refdes", "designator", "connectors", "plugs", "conn", "stecker", "kennzeichen", "bmk", "repere":
			return true
		}
		return name.IsConnectorWord(w)
	})
}

// isCount reports whether a heading says how many, or where in a set of drawings: "Ways", "Cavities used", "No. of contacts", "Sheet".
// From memory, no source.
func isCount(head string) bool {
	w := name.Words(table.Fold(head))
	return len(w) > 0 && len(w) < 5 && slices.ContainsFunc(w, func(w string) bool { return strings.Contains(counted, " "+w+" ") })
}

// counted are the words of such headings.
const counted = " ways wires pins poles contacts cavities circuits cores positions fitted used populated occupied wired loaded spares " +
	"spare free empty blanks plugged qty count sheet page drawing dwg polzahl polig pole kontakte adern leitungen drahte " +
	"belegt bestuckt frei blatt seite voies broches fils contacts utilisees cablees libres feuille folio vias polos hilos " +
	"pines ocupados libres hoja pagina poli vie fili contatti usati liberi foglio polen aderig aders bezet vrij blad antal " +
	"poler ledere ledare brugt anvanda sida side "

// byWays reports whether the rows are such an index without counts in columns of their own: the first column names the connectors, each
// once, some other says of most of them how many ways they have, and none says anything of a wire.
//
//	Ref | What             | Type
//	J1  | Main board power | 2 way, 6.3 mm
//	J2  | Main board I/O   | 10 way
func byWays(cols []shape.Column, prof []column.Profile, rows []table.Row) bool {
	if len(cols) < 2 || len(prof) < len(cols) || !namesConnectors(&cols[0], &prof[0]) {
		return false
	}
	counts := false
	for i := 1; i < len(cols); i++ {
		switch c, p := &cols[i], &prof[i]; {
		case p.Filled == 0:
		case c.Given || p.Ends > 0 || p.Units > 0 || p.Most(p.Numbers) || p.Most(p.Colours):
			return false
		case c.Field == name.FieldFrom, c.Field == name.FieldTo, c.Field == name.FieldRun, c.Field == name.FieldGauge,
			c.Field == name.FieldPin, c.Field == name.FieldFromPin, c.Field == name.FieldToPin, c.Field == name.FieldColour:
			return false
		default:
			counts = counts || saysWays(rows, i, p.Filled)
		}
	}
	return counts
}

// saysWays reports whether most cells of a column begin with a number and a word for cavities.
func saysWays(rows []table.Row, i, filled int) bool {
	n := 0
	for _, r := range rows {
		if i >= len(r.Cells) {
			continue
		}
		w := strings.Fields(strings.ReplaceAll(table.Fold(r.Cells[i]), "-", " "))
		if len(w) > 1 && strings.Trim(w[0], "0123456789") == "" && strings.Contains(counted, " "+strings.Trim(w[1], ",.;")+"s ") {
			n++
		}
	}
	return n > 1 && 10*n >= 7*filled
}
