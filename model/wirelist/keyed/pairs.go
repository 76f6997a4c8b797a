package keyed

import (
	"slices"
	"strings"
	"unicode"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/toldcells"
)

const (
	least     = 3    // lines, or cards (no source)
	mostLines = 2000 // (no source)
	longest   = 300  // bytes of a line (no source)
)

// pair is a key and what stands behind it.
type pair struct{ key, says string }

// Pairs makes rows of a table of lines of keys and values; they are as they were where less than three lines are such ones.
func Pairs(h shape.Headings, t *table.Table) []table.Row {
	if h.HeadLine() > 0 || h.Numbered() || len(t.Rows) < least || len(t.Rows) > mostLines || !anyEquals(t.Rows) {
		return t.Rows
	}
	known := knownIn(h)
	means := map[string]string{}
	of := map[int][]pair{}
	var keys []string
	lines := 0
	for i, r := range t.Rows {
		if r.Level > 0 || r.Drawn != nil {
			continue
		}
		pairs := pairsIn(toldcells.Text(r.Cells))
		if len(pairs) < 2 {
			continue
		}
		if explains(known, pairs) && len(of) == 0 {
			for _, p := range pairs {
				means[p.key] = p.says
			}
			continue
		}
		if of[i] = pairs; len(pairs) > 2 {
			lines++
		}
		for _, p := range pairs {
			if !slices.Contains(keys, p.key) {
				keys = append(keys, p.key)
			}
		}
	}
	if lines < least || len(keys) > 12 {
		return t.Rows
	}
	heads := headings(known, keys, means)
	if heads == nil || !haveCavities(known, heads, keys, of) {
		return t.Rows
	}
	headed := false
	var rows []table.Row
	for i, r := range t.Rows {
		pairs := of[i]
		if pairs == nil {
			r.Cells = []string{toldcells.Text(r.Cells)}
			rows, headed = append(rows, r), false
			continue
		}
		r.Prose, r.Point, r.Gap = false, false, nil
		if !headed {
			rows, headed = append(rows, table.Row{Line: r.Line, Cells: heads, First: true, Ruled: t.Marked}), true
		}
		r.Cells, r.First = make([]string, len(keys)), false
		for _, p := range pairs {
			k := slices.Index(keys, p.key)
			if r.Cells[k] != "" {
				r.Cells[k] += "; "
			}
			r.Cells[k] += p.says
		}
		rows = append(rows, r)
	}
	return rows
}

// haveCavities reports whether at least half of the ends that lines say have a number or a pole in them: "from=Bergen" has none.
func haveCavities(known func(string) string, heads, keys []string, of map[int][]pair) bool {
	n, with := 0, 0
	for _, pairs := range of {
		for _, p := range pairs {
			switch known(heads[slices.Index(keys, p.key)]) {
			case "from", "to":
				if n++; toldcells.EndsInCavity(p.says) {
					with++
				}
			}
		}
	}
	return 2*with >= n
}

// anyEquals reports whether some line has two signs of equality, or two colons with semicolons between, which few lists have.
func anyEquals(rows []table.Row) bool {
	return slices.ContainsFunc(rows, func(r table.Row) bool {
		n, colons := 0, 0
		for _, c := range r.Cells {
			n += strings.Count(c, "=")
			colons += strings.Count(c, ": ")
		}
		return n > 1 || colons > 2
	})
}

// pairsIn parts "c=brown; f=PLC Q0, t=valve 1 pin 1" at its keys; nil where a word stands before the first that is none.
func pairsIn(text string) (all []pair) {
	if len(text) > longest {
		return nil
	}
	at := 0 // where the value of the last pair begins
	for i := 0; i < len(text); i++ {
		if text[i] != '=' && (text[i] != ':' || i+1 == len(text) || text[i+1] != ' ') {
			continue
		}
		key := strings.TrimRight(text[:i], " ")
		from := len(strings.TrimRightFunc(key, func(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) }))
		if key = key[from:]; key == "" || from < at || unicode.IsDigit(rune(key[0])) {
			continue
		}
		if len(all) > 0 {
			all[len(all)-1].says = trimmed(text[at:from])
		}
		all = append(all, pair{key: strings.ToLower(key)})
		at = i + 1
	}
	if len(all) > 0 {
		all[len(all)-1].says = trimmed(text[at:])
	}
	return all
}

func trimmed(s string) string { return strings.Trim(s, " \t,;|/") }

// knownIn says of a heading which field it is, "" where it is none.
func knownIn(h shape.Headings) func(string) string {
	met := map[string]string{}
	return func(key string) string {
		f, seen := met[key]
		if !seen {
			cols, _ := h.Columns([]table.Row{{Cells: []string{key, ""}}}, 2)
			if f = string(cols[0].Field); cols[0].Field == name.FieldKeep || cols[0].Field == name.FieldIgnore {
				f = ""
			}
			met[key] = f
		}
		return f
	}
}

// explains reports whether the values of a line are headings: it says what the keys mean.
func explains(known func(string) string, pairs []pair) bool {
	n := 0
	for _, p := range pairs {
		if known(p.says) != "" {
			n++
		}
	}
	return len(pairs) > 1 && 3*n >= 2*len(pairs)
}

// headings are those of the keys; nil where the keys do not say where a wire starts.
func headings(known func(string) string, keys []string, means map[string]string) (heads []string) {
	starts, more := false, 0
	for _, k := range keys {
		head := means[k]
		if head == "" {
			if head = k; known(head) == "" || (k == "a" || k == "b") && slices.Contains(keys, "a") && slices.Contains(keys, "b") {
				head = short[k]
			}
		}
		if head == "" {
			head = k
		}
		switch known(head) {
		case "":
		case "from", "pin":
			starts = true
		default:
			more++
		}
		heads = append(heads, head)
	}
	if !starts || more < 2 {
		return nil
	}
	return heads
}

// short are short forms that stand before a fact where nothing says what they mean. From memory, no source.
var short = map[string]string{"col": "Colour", "clr": "Colour", "farbe": "Farbe", "use": "Signal", "does": "Signal", "a": "From", "b": "To",
	"end a": "From", "end b": "To", "name": "Signal"}
