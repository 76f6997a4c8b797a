package signoff

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/prose"
	"contralay/model/wirelist/signs"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/titleline"
	"contralay/model/wirelist/value"
)

// What stands among the rows of a list and is none: who drew it, which page it is, what
// was changed in which revision.

// Digits, signs that part words, and signs round a heading.
var digits, parting, roundHeads = signs.Of("0123456789"), signs.Of(" :"), signs.Of(" .:")

// Is reports whether the first cell of a row says who made or released the paper, of
// when it is, or which page: "Drawn by: the shop | Date: 12/03", "Rev: B", "Sheet 1 of 2". "Data"
// and "Rev" are names of nets as well: alone they say nothing.
func Is(r table.Row) bool {
	n, first := r.Filled()
	if n == 1 && first[0] == '(' {
		return titleline.IsPageMark(table.Fold(first)) // "(continued on next page)"
	}
	if n == 0 || !value.IsLetter(first[0]) || !parting.In(first) && digits.In(first) {
		return false // most rows
	}
	f := table.Fold(first)
	if titleline.IsPageMark(f) || r.Line < 9 && prose.IsMailHead(first) && !holdsEnd(r) || n < 3 && isLegend(r, f) || tellsSigns(r, f) ||
		eachSigns(r) || saysWork(r, n, f) {
		return true
	}
	word, rest, _ := name.CutWord(f)
	rest = strings.TrimLeft(rest, " .")
	for _, w := range []string{"by", "no", "nr", "number", "date", "von", "am", "par", "le", "por", "da", "il"} {
		if after, ok := strings.CutPrefix(rest, w); ok && (after == "" || strings.ContainsAny(after[:1], " .:")) {
			rest = strings.TrimLeft(after, " .")
			break
		}
	}
	says, colon := strings.CutPrefix(rest, ":")
	if says = strings.TrimSpace(says); says == "" {
		says = behind(r, first)
	}
	return saysSignOff(word, rest, says, colon, n > 1 || strings.Contains(f, " ")) && !holdsEnd(r)
}

// tellsSigns reports whether each cell of a row says what a sign means, a word for a legend before the first or none: "Legende: DBU =
// dunkelblau | AEH = Aderendhülse".
func tellsSigns(r table.Row, first string) bool {
	lead, rest, ok := strings.Cut(first, ":")
	if lead = strings.TrimSpace(lead); !ok || !isLegendWord(lead) && !headsColours(lead) || strings.TrimSpace(rest) == "" {
		return false
	}
	for k, c := range r.Cells {
		if c != "" && (k > 0 || strings.Contains(rest, "=")) && !strings.Contains(c, "=") {
			return false
		}
	}
	return true
}

// isLegend reports whether a row of one cell or two says what signs or colours mean, or is a note about the whole list:
// "Legend | PV = panel, B = battery", "Note | all ends are tinned in the shop".
func isLegend(r table.Row, first string) bool {
	last := ""
	for _, c := range r.Cells {
		if c != "" {
			last = c
		}
	}
	if isLegendWord(strings.Trim(first, " .:")) {
		return true
	}
	switch strings.Trim(first, " .:") {
	case "note", "notes", "nota", "notas", "notes generales", "hinweis", "hinweise", "bemerkung", "anmerkung", "remarque",
		"remarques", "obs",
		"uwaga", "uwagi", "anm", "remarks", "remark":
		return len(strings.Fields(last)) > 3
	}
	return strings.Count(last, " = ") > 1
}

// isLegendWord reports whether a folded word heads what says what signs mean.
func isLegendWord(w string) bool {
	switch w {
	case "legend", "legende", "leyenda", "leggenda", "legenda", "key", "abbreviations", "abkurzungen", "abreviaturas":
		return true
	}
	return false
}

// headsColours reports whether a folded text before a colon leads to short forms of colours.
func headsColours(lead string) bool {
	switch lead {
	case "colour code", "colour codes", "color code", "color codes", "colours", "colors", "farben", "farbcode", "farbcodes", "farbkurzel",
		"couleurs", "colores", "colori":
		return true
	}
	return false
}

// saysSignOff reports whether a word and what stands behind it say who made the paper, or when;
// more says that it is not the word alone.
func saysSignOff(word, rest, says string, colon, more bool) bool {
	switch word {
	case "prepared", "drawn", "checked", "approved", "designed", "released", "issued", "signed",
		"gezeichnet", "gez", "gepruft", "gepr", "freigegeben", "erstellt", "bearbeiter",
		"dessine", "verifie", "approuve", "etabli", "dibujado", "revisado", "aprobado", "disegnato", "verificato", "approvato":
		return colon || rest == "" && more
	case "date", "datum", "fecha", "data", "stand":
		return (colon || rest == "") && isDay(says)
	case "rev", "revision", "issue", "drawing", "dwg", "drg", "zeichnung", "indice", "plano", "disegno", "author":
		return colon
	}
	return false
}

// holdsEnd reports whether some cell names a cavity of a connector, so that the row is a wire.
func holdsEnd(r table.Row) bool {
	for _, c := range r.Cells {
		if _, pin, ok := name.SplitEnd(c); ok && name.IsCavity(pin) && strings.Contains(c, ":") && !strings.Contains(c, " ") {
			return true
		}
	}
	return false
}

// behind is the cell after the first that is filled.
func behind(r table.Row, first string) string {
	seen := false
	for _, c := range r.Cells {
		if c != "" && seen {
			return c
		}
		seen = seen || c == first
	}
	return ""
}

// isDay reports whether s is numbers with strokes, dots or dashes between, or with the name of
// a month.
func isDay(s string) bool {
	parts := strings.FieldsFunc(s, func(r rune) bool { return strings.ContainsRune("/.- ,", r) })
	return len(parts) == 3 && strings.Trim(parts[0], "0123456789") == "" && strings.Trim(parts[2], "0123456789") == ""
}

// IsRevisionHead reports whether a row is the headings of a table of changes: a revision and a
// day.
func IsRevisionHead(r table.Row) bool {
	rev, day := false, false
	for _, c := range r.Cells {
		if len(c) < 2 || len(c) > 12 || digits.In(c) {
			continue
		}
		switch f := roundHeads.Trim(table.Fold(c)); f {
		case "rev", "revision", "issue", "index", "ind", "indice", "anderung", "ausgabe", "revisione", "ver", "version":
			rev = true
		case "date", "datum", "fecha", "data", "day", "tag":
			day = true
		}
	}
	return rev && day
}
