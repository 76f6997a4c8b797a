package tail

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Below the wires of a list often stands what was changed in it, when and by whom, in the same columns and without headings.
//
//	Nr. | Signal | von | Pin | nach | Pin | Farbe
//	1   | Masse  | X1  | 2   | A1   | 2   | br
//
//	Änderungen
//	a   | 12.03. | Radsensor dazu

// IsChange reports whether a row is such a change: it begins with the letter or the number of the change, or with its day, and ends in a
// few words. What has no title that says so has its day with the year, where the rows above have none. No colour, size or end is in it.
func IsChange(cols []shape.Column, above []table.Row, r table.Row, title string) bool {
	titled, dated, last := SaysChanges(title), false, ""
	first := -1
	for i, cell := range r.Cells {
		if cell == "" || i >= len(cols) {
			continue
		}
		last = cell
		if first < 0 {
			first = i
		}
		if n := dayParts(cell); n > 2 || titled && n > 1 {
			if !slices.ContainsFunc(above, func(o table.Row) bool { return i < len(o.Cells) && dayParts(o.Cells[i]) > 1 }) {
				dated = true
				continue
			}
		}
		if _, pin, ok := name.SplitEnd(cell); ok && !strings.Contains(cell, " ") && name.IsCavity(pin) && i != first {
			return false
		}
		switch cols[i].Field {
		case name.FieldColour:
			if _, ok := value.ParseColour(cell, ""); ok {
				return false
			}
		case name.FieldGauge:
			if g, ok := value.ParseGauge(cell, value.BareAWG, value.MarkUnknown); ok && g.Size != "" {
				return false
			}
		}
	}
	if first < 0 || !dated && !titled {
		return false
	}
	begins := r.Cells[first]
	return last != begins && saysMuch(last) && (dayParts(begins) > 1 || isChangeNumber(begins))
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

// SaysChanges reports whether a title is of such a table: every word of it is one for changes, or joins those.
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
		"revisies zmiany rewizje zmeny revize andringar endringer aendringer alteracoes revisoes muutokset "
	ofChanges = " list log record records notes table of the to this since sheet drawing harness loom date dates rev change " +
		"liste tabelle der am an des du de las los le delle van het "
	months = " jan feb mar apr may jun jul aug sep oct nov dec mrz mai okt dez fev avr jui aou ene abr ago dic gen mag giu " +
		"lug set ott maa mei mrt sty lut kwi maj cze lip sie wrz paz lis gru out "
)
