package tail

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Below the wires of a list often stands what was changed in it, when and by whom, or what is still to be done, in the same columns and
// without headings.
//
//	Nr. | Signal | von | Pin | nach | Pin | Farbe
//	1   | Masse  | X1  | 2   | A1   | 2   | br
//
//	Änderungen
//	a   | 12.03. | Radsensor dazu

// IsChange reports whether a row is such a change: it begins with the letter or the number of the change, or with its day, and ends in a
// few words. What has no title that says so has its day with the year, where the rows above have none. No colour, size or end is in it; one
// without a day has not both ends of a wire either, and is not counted as the cavities above are.
func IsChange(cols []shape.Column, above []table.Row, r table.Row, title string) bool {
	titled, dated := SaysChanges(title), false
	begins, last := "", ""
	for i, cell := range r.Cells {
		if cell == "" || i >= len(cols) {
			continue
		}
		if begins == "" {
			begins = cell
		}
		last = cell
		isDay := func(o table.Row) bool { return i < len(o.Cells) && dayParts(o.Cells[i]) > 1 }
		if n := dayParts(cell); (n > 2 || titled && n > 1) && !slices.ContainsFunc(above, isDay) {
			dated = true
		} else if cell != begins && isEnd(cell) || hasValue(cols[i].Field, cell) {
			return false
		}
	}
	return (dated || titled && !isBetween(cols, r) && !isCounted(cols, above, r)) && last != begins && saysMuch(last) &&
		(dayParts(begins) > 1 || isChangeNumber(begins))
}

// isEnd reports whether a cell is the end of a wire, "X1:4".
func isEnd(cell string) bool {
	_, pin, ok := name.SplitEnd(cell)
	return ok && !strings.Contains(cell, " ") && name.IsCavity(pin)
}

// hasValue reports whether a cell is a colour or a size in a column of them.
func hasValue(of name.Field, cell string) bool {
	switch of {
	case name.FieldColour:
		_, ok := value.ParseColour(cell, "")
		return ok
	case name.FieldGauge:
		g, ok := value.ParseGauge(cell, value.BareAWG, value.MarkUnknown)
		return ok && g.Size != ""
	}
	return false
}

// isBetween reports whether a row says where a wire comes from and where it goes.
func isBetween(cols []shape.Column, r table.Row) bool {
	says := func(fields ...name.Field) bool {
		for i, c := range cols {
			if i < len(r.Cells) && r.Cells[i] != "" && slices.Contains(fields, c.Field) {
				return true
			}
		}
		return false
	}
	return says(name.FieldRun) || says(name.FieldFrom, name.FieldFromPin) && says(name.FieldTo, name.FieldToPin)
}

// isCounted reports whether a row begins as the cavities above it do: "A" below "B" and "C", "7" below "5" and "6".
func isCounted(cols []shape.Column, above []table.Row, r table.Row) bool {
	at := slices.IndexFunc(cols, func(c shape.Column) bool { return c.Field == name.FieldPin })
	if at < 0 || at >= len(r.Cells) || r.Cells[at] == "" {
		return false
	}
	kind := func(cell string) string {
		of := counts(cell)
		if len(of) == 1 && of == strings.ToLower(cell) {
			return "letter"
		}
		return of
	}
	return slices.ContainsFunc(above, func(o table.Row) bool {
		return at < len(o.Cells) && o.Cells[at] != "" && !shape.IsText(o) && kind(o.Cells[at]) == kind(r.Cells[at])
	})
}

// saysMuch reports whether a cell is a text: two words, or a long one.
func saysMuch(cell string) bool {
	const long = 6 // letters (no source)
	return strings.ContainsAny(strings.ToLower(cell), "abcdefghijklmnopqrstuvwxyz") && (strings.Contains(cell, " ") || len(cell) > long)
}

// isChangeNumber reports whether a cell is what changes are counted by: "A", "b", "3", "1.2", "Rev B".
func isChangeNumber(cell string) bool {
	f := strings.TrimRight(table.Fold(cell), ".:)")
	for _, w := range []string{"revision", "rev", "issue", "version", "ver", "v", "index", "ind", "indice", "stand"} {
		if rest, ok := strings.CutPrefix(f, w); ok && rest != "" {
			f = strings.TrimLeft(rest, " .:-")
			break
		}
	}
	return len(f) == 1 && f[0] >= 'a' && f[0] <= 'z' || f != "" && len(f) < 4 && strings.Trim(f, "0123456789.") == ""
}

// dayParts is how many of day, month and year a cell says, and nothing else: 3 of "12.03.24" and "3 May 24", 2 of "12.03." and
// "March 2024"; 0 of what is no day.
func dayParts(cell string) int {
	if len(cell) < 4 || len(cell) > 18 || !strings.ContainsAny(cell, "0123456789") {
		return 0
	}
	parts := strings.FieldsFunc(table.Fold(cell), func(r rune) bool { return strings.ContainsRune("/.- ,'", r) })
	if len(parts) < 2 || len(parts) > 3 {
		return 0
	}
	named := false
	for _, p := range parts {
		switch {
		case strings.Trim(p, "0123456789") == "":
			if len(p) > 2 && len(p) != 4 {
				return 0
			}
		case !named && len(p) > 2 && strings.Contains(months, " "+p[:3]+" ") && len(p) < 11:
			named = true
		default:
			return 0
		}
	}
	return len(parts)
}

// SaysChanges reports whether a title is of such a table, or of one of what is still to be done: every word of it is one for those, or
// joins them.
func SaysChanges(title string) bool {
	const most = 4 // words (no source)
	w := name.Words(table.Fold(title))
	says := false
	for _, w := range w {
		of := strings.Contains(changes, " "+w+" ")
		if !of && !strings.Contains(ofChanges, " "+w+" ") {
			return false
		}
		says = says || of
	}
	return says && len(w) <= most
}

// The words for changes, those beside them in a title, and the first three letters of the months, folded. From memory, no source.
const (
	changes = " changes revisions revision history changelog amendments anderungen anderung anderungsstand aenderungen " +
		"revisionen historie anderungshistorie modifications revisiones cambios modificaciones modifiche revisioni wijzigingen " +
		"revisies zmiany rewizje zmeny revize andringar endringer aendringer alteracoes revisoes muutokset " +
		"todo do jobs tasks snags open offene offen restarbeiten "
	ofChanges = " list log record records notes table of the to this since sheet drawing harness loom date dates rev change " +
		"liste tabelle still points items punkte left der am an des du de las los le delle van het "
	months = " jan feb mar apr may jun jul aug sep oct nov dec mrz mai okt dez fev avr jui aou ene abr ago dic gen mag giu " +
		"lug set ott maa mei mrt sty lut kwi maj cze lip sie wrz paz lis gru out "
)
