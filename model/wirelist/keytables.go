package wirelist

import (
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/huekey"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// keyTable is some rows of a sheet that say what its short forms of colours mean, a row for each.
//
//	Colours
//	N | brown
//	U | blue
//	R | red
type keyTable struct {
	at, n int // the first of its rows, its headings among them, and how many they are
	key   huekey.ColourKey
}

// leastKey is how many rows a key has at least: fewer are a table of something else (no source).
const leastKey = 3

// keyTables finds the keys to colours of a sheet that have a row for each colour. Rows are such a key where they hold nothing else,
// most of the short forms are letters of their words, and other cells of the sheets are written in them: "A | red" is a cavity.
func keyTables(known map[string]name.Meaning, t *table.Table, all []table.Table) (keys []keyTable) {
	for i := 0; i < len(t.Rows); i++ {
		run := keyRun(t.Rows[i:])
		if run.n < leastKey {
			i += max(run.n-1, 0)
			continue
		}
		run.at = i
		i += run.n - 1
		if run.at > 0 && isKeyHead(t.Rows[run.at-1], t.Rows[run.at]) {
			run.at, run.n = run.at-1, run.n+1
			if headsOthers(t.Rows[run.at], known) {
				continue
			}
		}
		if run.isUsed(t, all) {
			keys = append(keys, run)
		}
	}
	return keys
}

// keyRun is how many rows from the first on are short forms of colours with the word of each beside it, or before it.
func keyRun(rows []table.Row) (run keyTable) {
	run.key = huekey.ColourKey{}
	words := map[string]bool{}
	swapped, letters := false, 0
	for _, r := range rows {
		cells := slices.DeleteFunc(slices.Clone(r.Cells), func(c string) bool { return c == "" })
		if len(cells) != 2 || r.Level > 0 || run.n > 0 && (r.First || r.Line > rows[run.n-1].Line+1) {
			break
		}
		if run.n == 0 {
			swapped = huekey.IsKeyPair(cells[1], cells[0])
		}
		short, word := cells[0], cells[1]
		if swapped {
			short, word = word, short
		}
		folded := table.Fold(short)
		hues, _ := value.ParseColour(word, "")
		own := len(hues) == 1 && run.key[folded] == "" && !words[table.Fold(word)] // "Gy", "grey" below "G" and "Y"
		own = own && huekey.IsKeyPair(short, word)
		if run.n >= leastKey && !own && (run.key.Written(short) || isCodeOf(short, word)) && isColour(word) {
			run.n++ // "swrt", "black and red": what the rows above say already
			letters++
			continue
		}
		if !huekey.IsKeyPair(short, word) || run.key[folded] != "" || words[table.Fold(word)] {
			break
		}
		if huekey.IsShortOf(short, word) || isCodeOf(short, word) {
			letters++
		}
		words[table.Fold(word)], run.key[folded] = true, word
		run.n++
	}
	if 4*letters < 3*run.n {
		run.n = 0
	}
	return run
}

// isCodeOf reports whether a short form is the code that its colour has in English, of the word of another language: "BK", "schwarz".
func isCodeOf(short, word string) bool {
	a, code := value.ParseColour(short, "")
	b, colour := value.ParseColour(word, "")
	return code && colour && len(short) > 1 && a.Equal(b)
}

func isColour(word string) bool {
	_, ok := value.ParseColour(word, "")
	return ok
}

// isKeyHead reports whether a row is the headings of the two columns of a key, in no other column.
func isKeyHead(head, first table.Row) bool {
	for i := range max(len(head.Cells), len(first.Cells)) {
		if (i < len(head.Cells) && head.Cells[i] != "") != (i < len(first.Cells) && first.Cells[i] != "") {
			return false
		}
	}
	return head.Level == 0 && !shape.HasNumber(head)
}

// headsOthers reports whether one of two headings is known for cavities, for names of nets or for ends: then the short forms below are
// such, "Pad | Colour" above "R | red".
func headsOthers(head table.Row, known map[string]name.Meaning) bool {
	return slices.ContainsFunc(name.Words(table.Fold(strings.Join(head.Cells, " "))), func(w string) bool {
		switch known[w].Field {
		case name.FieldPin, name.FieldSignal, name.FieldConnector, name.FieldFrom, name.FieldTo:
			return true
		}
		return name.IsPinWord(w)
	})
}

// isUsed reports whether several cells of the sheets, beside those of the key, are written in its short forms.
func (k *keyTable) isUsed(own *table.Table, all []table.Table) bool {
	const least = 2 // cells (no source)
	n := 0
	for i := range all {
		for j, r := range all[i].Rows {
			if all[i].File == own.File && all[i].Sheet == own.Sheet && j >= k.at && j < k.at+k.n {
				continue
			}
			for _, c := range r.Cells {
				c = withoutSize(c)
				if len(c) <= 8 && strings.Trim(c, "0123456789") != "" && k.key.Written(c) {
					if n++; n >= least {
						return true
					}
				}
			}
		}
	}
	return false
}

// withoutSize is a cell without the number of a size before its colour, "22 Y/Bk".
func withoutSize(cell string) string {
	if size, colour, ok := strings.Cut(cell, " "); ok && strings.Trim(size, "0123456789.,") == "" {
		return colour
	}
	return cell
}

// withoutKeys takes the rows of the keys to colours out of some sheets: they are no wires. What they say is given to the importer.
// known are the headings that are known.
func withoutKeys(im *draft.Importer, known map[string]name.Meaning, tables []table.Table) []table.Table {
	out := slices.Clone(tables)
	for i := range out {
		t := &out[i]
		keys := keyTables(known, t, tables)
		if len(keys) == 0 {
			continue
		}
		var rest []table.Row
		from := 0
		for _, k := range keys {
			rest = append(rest, t.Rows[from:k.at]...)
			from = k.at + k.n
			takeKey(im, t.File, k.key)
			at := table.Place{File: t.File, Sheet: t.Sheet, Row: t.Rows[k.at].Line}
			var says []string
			for _, r := range t.Rows[k.at:from] {
				says = append(says, shape.RowText(r.Cells))
			}
			im.Say(report.Note, "key to the colours", at, strings.Join(says, ", "), readByKey)
			last := &im.Rep.Findings[len(im.Rep.Findings)-1]
			for _, r := range t.Rows[k.at:from] {
				last.Rows = append(last.Rows, r.Line)
			}
		}
		t.Rows = append(rest, t.Rows[from:]...)
	}
	return out
}

// readByKey is what is done with a key to colours.
const readByKey = "the colours are read by it"

// takeKey gives the importer a key to the colours of a file.
func takeKey(im *draft.Importer, file string, key huekey.ColourKey) {
	if im.Keys == nil {
		im.Keys = map[string]huekey.ColourKey{}
	}
	if im.Keys[file] == nil {
		im.Keys[file] = huekey.ColourKey{}
	}
	for short, word := range key {
		im.Keys[file][short] = word
	}
}
