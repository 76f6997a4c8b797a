package sidehead

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// What a column below an end is.
type What int

const (
	Other   What = iota // nothing that this package knows
	Place               // the device or the connector, or the whole end
	Cavity              // where on it
	Fitting             // what is put on that end of the wire: it says nothing of the wire itself
)

// Part is one column of the second row.
type Part struct {
	End  int // 1 or 2; 0 of a column that stands below neither
	What What
	Head string // what the first row says of the end
	Own  bool   // of cavities: the first row names their connector
}

// Parts reads two rows of headings; nil where they are no such two. known are the headings that have a meaning.
func Parts(group, below table.Row, known map[string]name.Meaning) []Part {
	if !comesAgain(below) {
		return nil // most rows
	}
	first, second := ends(group, known)
	own := first < 0
	if own {
		first, second = named(group, below, known)
	}
	if first < 0 || !couldHead(below, known) {
		return nil
	}
	at, n := repeated(group, below, first, second)
	if n == 0 {
		return nil
	}
	heads := make([]string, n)
	for k := range heads {
		heads[k] = table.Fold(below.Cells[at+k])
	}
	if n == 1 && field(heads[0], known) != name.FieldConnector && !isPlace(heads[0]) && (!own || field(heads[0], known) != name.FieldPin) {
		return nil // the one word could be a cell that both ends have alike
	}
	all := make([]Part, len(below.Cells))
	what := kinds(heads, known)
	own = own && !slices.Contains(what, Place)
	for k, is := range what {
		all[at+k] = Part{1, is, group.Cells[first], own && is == Cavity}
		all[at+k+second-first] = Part{2, is, group.Cells[second], own && is == Cavity}
	}
	return all
}

// comesAgain reports whether some text stands in two cells of a row.
func comesAgain(r table.Row) bool {
	for i, c := range r.Cells {
		again := func(o string) bool { return strings.EqualFold(c, o) }
		if len(c) > 1 && value.IsLetter(c[0]) && slices.ContainsFunc(r.Cells[i+1:], again) {
			return true
		}
	}
	return false
}

// ends finds the two cells of the first row that name the ends; −1 where none do.
func ends(group table.Row, known map[string]name.Meaning) (first, second int) {
	first = -1
	for i, c := range group.Cells {
		switch {
		case c == "":
		case first >= 0 && areEnds(group.Cells[first], c, known):
			return first, i
		case first < 0 && isEnd(c, known):
			first = i
		}
	}
	return -1, -1
}

// isEnd reports whether a heading names an end: a from, a to, or some words of which one is for an end, "Left end", "Seite A".
func isEnd(head string, known map[string]name.Meaning) bool {
	f := field(table.Fold(head), known)
	return f == name.FieldFrom || f == name.FieldTo || endWord(head) != ""
}

// areEnds reports whether two headings name the two ends: one the from and one the to, or the same word for an end with
// another beside it.
func areEnds(a, b string, known map[string]name.Meaning) bool {
	of, to := field(table.Fold(a), known), field(table.Fold(b), known)
	if of == name.FieldFrom && to == name.FieldTo || of == name.FieldTo && to == name.FieldFrom {
		return true
	}
	return endWord(a) != "" && endWord(a) == endWord(b) && table.Fold(a) != table.Fold(b)
}

// endWord is the word for an end in a heading of two words or three, "" where none is.
func endWord(head string) string {
	w := name.Words(table.Fold(head))
	if len(w) < 2 || len(w) > 3 {
		return ""
	}
	for _, word := range w {
		if IsEndWord(word) {
			return word
		}
	}
	return ""
}

// IsEndWord reports whether a folded word is one for an end or a side, in one of several languages.
func IsEndWord(w string) bool {
	switch w {
	case "side", "end", "seite", "ende", "cote", "bout", "extremite", "lado", "extremo", "lato", "capo", "estremita", "zijde", "kant",
		"uiteinde", "sida", "ande", "strona", "koniec", "strana", "konec":
		return true
	}
	return false
}

// field is what a folded heading alone says.
func field(folded string, known map[string]name.Meaning) name.Field {
	return known[strings.Join(name.Words(folded), " ")].Field
}

// couldHead reports whether a row could be headings: no cell is a number or a size, and one is known for a heading.
func couldHead(r table.Row, known map[string]name.Meaning) bool {
	one := false
	for _, c := range r.Cells {
		if c == "" {
			continue
		}
		if g, ok := value.ParseGauge(c, value.BareAWG, value.MarkUnknown); ok && g.Size != "" || strings.Trim(c, "0123456789.,-/ ") == "" ||
			strings.ContainsAny(c, ":;=") {
			return false
		}
		m, ok := known[strings.Join(name.Words(table.Fold(c)), " ")]
		one = one || ok && !m.Weak
	}
	return one
}

// repeated finds the longest run of headings that stands below the first end and, word for word, below the second; a cell of
// the first row ends it.
func repeated(group, below table.Row, first, second int) (at, n int) {
	apart := second - first
	for from := 0; from <= first; from++ {
		k := 0
		for k < apart && from+k+apart < len(below.Cells) {
			a, b := below.Cells[from+k], below.Cells[from+k+apart]
			if a == "" || table.Fold(a) != table.Fold(b) || isOther(group, from+k, first) || isOther(group, from+k+apart, second) {
				break
			}
			k++
		}
		if k > n && first < from+k {
			at, n = from, k
		}
	}
	return at, n
}

// isOther reports whether the first row has a heading over a column that is not the one of the end.
func isOther(group table.Row, i, end int) bool {
	return i != end && i < len(group.Cells) && group.Cells[i] != "" && group.Cells[i] != group.Cells[end]
}

// kinds says what each of the headings of an end is.
func kinds(heads []string, known map[string]name.Meaning) []What {
	is := func(f name.Field) func(string) bool { return func(h string) bool { return field(h, known) == f } }
	cavity := slices.IndexFunc(heads, func(h string) bool { return field(h, known) == name.FieldPin && !IsFitting(h) })
	if cavity < 0 {
		cavity = slices.IndexFunc(heads, isStud)
	}
	if cavity < 0 {
		cavity = slices.IndexFunc(heads, is(name.FieldPin))
	}
	place := slices.IndexFunc(heads, is(name.FieldConnector))
	free := func(k int) bool {
		f := field(heads[k], known)
		return k != cavity && k != place && !IsFitting(heads[k]) && (f == "" || f == name.FieldSignal || f == name.FieldNumber)
	}
	for k := 0; k < len(heads) && place < 0 && (cavity < 0 || k < cavity); k++ {
		if free(k) {
			place = k
		}
	}
	if next := place + 1; cavity < 0 && place >= 0 && next < len(heads) && field(heads[next], known) == "" && free(next) {
		cavity = next
	}
	all := make([]What, len(heads))
	for k, h := range heads {
		switch f := field(h, known); {
		case k == place:
			all[k] = Place
		case k == cavity:
			all[k] = Cavity
		case cavity >= 0 && IsFitting(h), place >= 0 && (IsFitting(h) || f == "" || f == name.FieldWire || f == name.FieldLength):
			all[k] = Fitting
		}
	}
	return all
}

// isPlace reports whether a heading is a word for where an end is.
func isPlace(folded string) bool {
	switch folded {
	case "place", "location", "position", "at", "item", "equipment", "apparatus", "ort", "platz", "betriebsmittel", "lieu", "endroit",
		"repere", "lugar", "luogo", "posto", "plaats", "plats", "miejsce", "misto":
		return true
	}
	return false
}

// isStud reports whether a heading is a word for what the end of a heavy cable is screwed to.
func isStud(folded string) bool {
	switch folded {
	case "stud", "post", "bolt", "bolzen", "gewindebolzen", "goujon", "plot", "esparrago", "perno", "bullone", "pinnbult":
		return true
	}
	return false
}

// IsFitting reports whether a folded heading has a word for what is put on the end of a wire.
func IsFitting(folded string) bool {
	return slices.ContainsFunc(name.Words(folded), func(w string) bool {
		switch strings.TrimSuffix(w, "s") {
		case "lug", "ferrule", "terminal", "contact", "crimp", "seal", "boot", "sleeve", "strip", "shrink", "heatshrink", "part",
			"fitting",
			"abisolieren", "abisolierung", "abisolierlange", "hulse", "aderendhulse",
			"kabelschuh", "kontakt", "dichtung", "tulle", "crimpkontakt",
			"hulsen", "aderendhulsen", "kabelschuhe", "kontakte", "dichtungen", "cosse", "embout",
			"joint", "manchon", "puntera", "contacto", "sello", "capocorda", "capicorda", "puntale", "puntali", "terminale",
			"terminali", "contatto", "guarnizione",
			"kabelschoen", "adereindhuls", "kabelsko", "konektor", "kabelove", "koncowka", "tulejka":
			return true
		}
		return false
	})
}
