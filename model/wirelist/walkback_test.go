package wirelist_test

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/file"
	"contralay/model/shorttest"
	"contralay/model/unit"
	"contralay/model/wirelist"
	"contralay/model/wirelist/cable"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/squareword"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// Nothing is invented: from every wire of every list there is a way back to the rows that tell of it, and each id, name, end,
// size, colour, pair and spare of it stands in a cell of theirs, or in the texts and headings of its table.
func TestEveryFactHasACell(t *testing.T) {
	n := 0
	for _, l := range shorttest.Some(kindsOfLists(t)) {
		n += walkBack(t, l.Name, l.data)
	}
	entries, err := os.ReadDir(lists)
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range shorttest.Some(entries) {
		if e.IsDir() || strings.HasSuffix(e.Name(), ".toml") || strings.HasSuffix(e.Name(), ".report") {
			continue
		}
		data, err := os.ReadFile(filepath.Join(lists, e.Name()))
		if err != nil {
			t.Fatal(err)
		}
		n += walkBack(t, e.Name(), data)
	}
	if n < 200 {
		t.Errorf("%d wires walked back", n)
	}
}

// walkBack walks back from every wire of one list and says how many there are.
func walkBack(t *testing.T, list string, data []byte) int {
	t.Helper()
	tables, err := table.Read(list, data, table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	h, rep, err := wirelist.Import(tables, draft.Options{})
	if err != nil {
		return 0 // refused
	}
	for k := 0; k < len(tables); k++ {
		tables = append(tables, tables[k].Letter...)
	}
	unit := map[string]bool{}
	for _, u := range h.Units {
		for _, id := range u.Wires {
			unit[id] = true
		}
	}
	for i := range h.Wires {
		w := &h.Wires[i]
		b := back{t: t, list: list, wire: w, rep: &rep}
		for _, r := range rep.Rows[w.ID] {
			b.cells = append(b.cells, rowAt(tables, r)...)
			b.cells = append(b.cells, goneOn(tables, &rep, r)...)
			for _, f := range rep.Findings { // the near end that the report says is that of the row above
				if f.Rule == "a row without a name and without a near end" && f.Sheet == r.Sheet && f.Row == r.Row {
					r.Row--
					b.cells = append(b.cells, rowAt(tables, r)...)
					break
				}
			}
			head := table.Place{} // the nearest heading above that the report says is taken for the rows below it
			for _, f := range rep.Findings {
				if f.Did == "taken for the rows below it" && f.Sheet == r.Sheet && f.Row < r.Row && f.Row > head.Row {
					head = f.Place
				}
			}
			b.cells = append(b.cells, rowAt(tables, head)...)
			for _, f := range rep.Findings { // a text that the report says is taken for this row
				if f.Did == "taken for the rows that say none" && f.Sheet == r.Sheet && slices.Contains(f.Rows, r.Row) {
					b.cells = append(b.cells, rowAt(tables, f.Place)...)
				}
			}
		}
		b.cells = append(b.cells, lettersWritten(&rep, b.cells)...)
		if list == "j15-vertical.csv" { // it stands on its side: the cells of a wire are in every row
			for _, r := range tables[0].Rows {
				b.cells = append(b.cells, r.Cells...)
			}
		}
		if list == "s07-boxed.txt" { // the line below its table says which colour is which letter
			for _, c := range slices.Clone(b.cells) {
				b.cells = append(b.cells, strings.NewReplacer("L", "blue", "R", "red", "N", "black").Replace(c))
			}
		}
		if list == "z07-square-millimetres-and-a-key.tsv" { // the line below its table does, and "do." is as above
			b.cells = append(b.cells, strings.Split("light green,do", ",")...)
		}
		if list == "y31-key-to-colours-in-words.csv" { // so does a line below this one
			for _, c := range slices.Clone(b.cells) {
				b.cells = append(b.cells, strings.NewReplacer("R/U", "red/blue").Replace(c))
			}
		}
		if list == "tr14-colour-letters-in-a-sentence.md" { // a sentence above its table does
			for _, c := range slices.Clone(b.cells) {
				b.cells = append(b.cells, strings.NewReplacer("Lg", "light green", "Br", "brown", "B", "black", "P", "pink",
					"W", "white").Replace(c))
			}
		}
		if strings.HasPrefix(list, "obl3") { // the last word of a line is letters
			for _, c := range slices.Clone(b.cells) {
				b.cells = append(b.cells, inWords(list, c[strings.LastIndexByte(c, ' ')+1:]))
			}
		}
		if list == "wi04-letters-beside-sizes.txt" { // a line above its points does
			for _, c := range slices.Clone(b.cells) {
				b.cells = append(b.cells, strings.NewReplacer(" N ", " brown ", "N/W", "brown/white", "P/W", "pink/white").Replace(c))
			}
		}
		if strings.HasPrefix(list, "hb01-") { // lines below its tables do
			for _, c := range slices.Clone(b.cells) {
				b.cells = append(b.cells, strings.NewReplacer("Lg", "light green", "Br", "brown", "B", "black").Replace(c))
			}
		}
		if list == "wi15-key-and-no-sizes.txt" {
			for _, c := range slices.Clone(b.cells) {
				b.cells = append(b.cells, strings.NewReplacer("B/G", "blue/green").Replace(c))
			}
		}
		if strings.HasPrefix(list, "pn03-") || strings.HasPrefix(list, "bn") { // its decimals have commas, and part the file
			b.cells = append(b.cells, strings.Join(b.cells, ","))
		}
		if strings.HasPrefix(list, "bn01-") { // strokes part its cells
			b.cells = append(b.cells, strings.Split(b.cells[0], "/")...)
		}
		if strings.HasPrefix(list, "cr13-") { // a name goes on below itself
			b.cells = append(b.cells, strings.Join(strings.Fields(strings.Join(b.cells, " ")), " "))
		}
		if slices.ContainsFunc(rep.Findings, func(f report.Finding) bool {
			return f.Rule == "a colour at the end of the number of a wire"
		}) {
			for _, c := range slices.Clone(b.cells) { // "G201B22-WHT"
				b.cells = append(b.cells, c[strings.LastIndexAny(c, "-_ 0123456789")+1:])
			}
		}
		for _, c := range slices.Clone(b.cells) {
			b.cells = append(b.cells, inWords(list, c))
		}
		if len(b.cells) == 0 {
			t.Errorf("%s: no row tells of wire %s", list, w.ID)
			continue
		}
		b.all = strings.TrimSuffix(list, filepath.Ext(list))
		for _, tab := range tables {
			b.all += "\x00" + tab.Sheet
			for _, r := range tab.Rows {
				b.all += "\x00" + strings.Join(r.Cells, "\x00")
			}
		}
		b.all = plain(b.all)
		b.walk(&h, unit[w.ID])
	}
	return len(h.Wires)
}

// lettersWritten are the short cells with each letter written out by a line that the report calls a key to the colours, "B black, N brown".
func lettersWritten(rep *report.Report, cells []string) (all []string) {
	words := map[string]string{}
	for _, f := range rep.Findings {
		if f.Rule != "key to the colours" {
			continue
		}
		w := strings.FieldsFunc(f.What, func(r rune) bool { return strings.ContainsRune(" ,:;=", r) })
		for i := 0; i+1 < len(w); i++ {
			if len(w[i]) < 3 && strings.ToUpper(w[i]) == w[i] {
				words[w[i]] = w[i+1]
				if i+2 < len(w) && (w[i+1] == "light" || w[i+1] == "dark") {
					words[w[i]] += " " + w[i+2]
				}
			}
		}
	}
	if len(words) == 0 {
		return nil
	}
	for _, c := range cells {
		const most = 8 // bytes of a cavity and two short forms
		if len(c) > most {
			continue
		}
		text := ""
		for part := range strings.FieldsFuncSeq(c, func(r rune) bool { return r == ' ' || r == '/' }) {
			if words[part] == "" && !strings.ContainsAny(part, "0123456789") { // "NS"
				for _, r := range part {
					text += words[string(r)] + "/"
				}
				continue
			}
			text += words[part] + "/"
		}
		all = append(all, strings.Trim(text, "/"))
	}
	return all
}

// goneOn is the cells of a row, each with that below it, where the report says that the row below goes on with this one.
func goneOn(tables []table.Table, rep *report.Report, at table.Place) (all []string) {
	cells := rowAt(tables, at)
	for _, f := range rep.Findings {
		if f.Rule != "goes on with the row above" || f.Sheet != at.Sheet || f.Row != at.Row+1 {
			continue
		}
		for i, more := range rowAt(tables, f.Place) {
			if more != "" && i < len(cells) {
				all = append(all, cells[i]+more, cells[i]+" "+more)
			}
		}
	}
	return all
}

// rowAt is the cells of a row.
func rowAt(tables []table.Table, at table.Place) (cells []string) {
	for _, t := range tables {
		for _, r := range t.Rows {
			if t.File == at.File && t.Sheet == at.Sheet && r.Line == at.Row {
				cells = append(cells, r.Cells...)
			}
		}
	}
	return cells
}

// back is the way back from one wire.
type back struct {
	t     *testing.T
	list  string
	wire  *model.Wire
	rep   *report.Report
	cells []string // of the rows that tell of it
	all   string   // of all of the list, plain
}

// holds reports whether some cell holds a text.
func (b *back) holds(text string) bool {
	return slices.ContainsFunc(b.cells, func(c string) bool { return strings.Contains(plain(c), plain(text)) })
}

func (b *back) walk(h *model.Harness, inUnit bool) {
	w := b.wire
	lost := func(what, text string) {
		b.t.Errorf("%s, wire %s: no cell says the %s %q: %q", b.list, w.ID, what, text, b.cells)
	}
	if !b.rep.Counted[w.ID] && !b.holds(w.ID) && !b.holds(w.ID[:max(0, strings.LastIndexByte(w.ID, '-'))]) {
		lost("id", w.ID)
	}
	for piece := range strings.SplitSeq(w.Signal.V, "; ") {
		if !b.holds(piece) && !b.above() && !b.ofPole(piece) {
			lost("name", piece)
		}
	}
	for _, end := range []string{w.From.V, w.To.V} {
		id, cavity, _ := strings.Cut(end, ":")
		if end == "" || cavity == "" {
			continue // none, or a splice
		}
		at := slices.IndexFunc(h.Terminations, func(t model.Termination) bool { return t.ID == id })
		called := h.Terminations[at].Name.Or(id)
		if !strings.Contains(b.all, plain(called)) && !strings.HasPrefix(id, "Connector-") && !b.inParts(called) {
			lost("connector", called)
		}
		made := b.rep.Numbered[id] || cavity == "1" && len(h.Terminations[at].Cavities) == 1
		if !made && !b.holds(cavity) && !b.inRange() && !b.inGrid(cavity) {
			lost("cavity", end)
		}
	}
	if w.Size != "" && !b.size(w.Size) {
		lost("size", w.Size)
	}
	if code, ok := value.ParseColour(w.Colour.V, ""); ok && !b.above() && !b.colours(code) {
		lost("colour", w.Colour.V)
	}
	if w.Shade.Set && !b.holds(string(w.Shade.V)) && !slices.ContainsFunc(b.cells, func(c string) bool {
		read, _ := value.ParseColour(c, "")
		return read.Shaded()
	}) {
		lost("shade", string(w.Shade.V))
	}
	says := strings.ToLower(strings.Join(b.cells, " "))
	if w.Role.V == model.RoleSpare && !slices.ContainsFunc([]string{"spare", "reserv", "réserv", "future", "not used", "used", "n/c",
		"unused", "riserva", "stow"},
		func(s string) bool { return strings.Contains(says, s) }) {
		lost("spare", w.ID)
	}
	if inUnit && !b.saysCable() {
		lost("cable", w.ID)
	}
}

// ofPole reports whether a name is that of a row and the pole that a heading says of its cells, "Bar Line": the report says that
// the row tells several wires, and a cell holds every word.
func (b *back) ofPole(called string) bool {
	return slices.ContainsFunc(b.rep.Findings, func(f report.Finding) bool {
		return f.Rule == "cells of a grid" || f.Rule == "several wires in a row"
	}) && !slices.ContainsFunc(strings.Fields(called), func(w string) bool { return !b.holds(w) })
}

// saysCable reports whether a cell says that the wire is made up with others: a kind of cable, a mark or a number of one below
// a heading of cables, a bracket, the wire it pairs with. A wire may be named by the row of another.
func (b *back) saysCable() bool {
	if slices.ContainsFunc(b.cells, func(c string) bool {
		g, ok := value.ParseGauge(c, value.BareAWG, value.MarkUnknown)
		return ok && g.IsCable() || cable.Words(c).IsCable() || cable.IsBracket(c) || len(cable.Partners(c)) > 0 || cable.IsMark(c)
	}) {
		return true
	}
	return slices.ContainsFunc([]string{"cable", "kabel", "pair", "shield", "twist", "schirm", "paire", "pos"}, func(w string) bool {
		return strings.Contains(b.all, w)
	})
}

// inParts reports whether a name is put together of words of the list, "Controller Analog".
func (b *back) inParts(called string) bool {
	for word := range strings.FieldsSeq(called) {
		if !strings.Contains(b.all, plain(word)) {
			return false
		}
	}
	return true
}

// inGrid reports whether a cavity is named by the cell that its row begins with and a heading: "B" and "4".
func (b *back) inGrid(cavity string) bool {
	return len(cavity) > 1 && slices.Contains(b.cells, cavity[:1]) && slices.Contains(b.cells, cavity[1:])
}

// inRange reports whether some cell is a range of cavities.
func (b *back) inRange() bool {
	return slices.ContainsFunc(b.cells, func(c string) bool { return strings.ContainsAny(c, "-–.") })
}

// size reports whether some cell says a size.
func (b *back) size(size string) bool {
	number := strings.TrimSuffix(size, "mm2")
	return slices.ContainsFunc(b.cells, func(c string) bool {
		c = strings.ReplaceAll(c, ",", ".")
		return strings.Contains(c, number) || strings.Contains(c, number+".0") || strings.Contains(number, strings.Trim(c, "."))
	}) || b.above()
}

// colours reports whether the hues of a colour stand in the cells, in one of them or in one each.
func (b *back) colours(code value.Colour) bool {
	var seen value.Colour
	cells := slices.Clone(b.cells)
	for _, c := range b.cells {
		for w := range strings.FieldsSeq(c) {
			cells = append(cells, w, strings.Trim(w, ",.")) // a word of a sentence
		}
		cells = append(cells, strings.TrimRight(c, "0123456789")) // the number of a core behind its colour
		cells = append(cells, strings.Split(c, " - ")...)         // a line of text holds several
		cells = append(cells, strings.TrimRight(c, ". "))         // the full stop of a sentence
		cells = append(cells, strings.FieldsFunc(c, func(r rune) bool { return strings.ContainsRune("()[],;:=", r) })...)
	}
	cut := strings.HasPrefix(b.list, "z06") || strings.HasPrefix(b.list, "z19") // lists of Polish colours cut short
	for _, c := range cells {
		if cut {
			if read, ok := value.FirstLetters(c, "pl"); ok {
				seen = append(seen, read...)
			}
		}
		for _, bare := range []value.Bare{value.BareAWG, value.BareMM2} {
			if g, ok := value.ParseGauge(c, bare, value.MarkUnknown); ok {
				seen = append(seen, g.Colour...)
			}
			for _, lang := range []string{"", "de", "fr", "es", "it"} {
				if g, ok := value.SizeAndColour(c, bare, lang, value.MarkUnknown); ok {
					seen = append(seen, g.Colour...)
				}
			}
		}
		for _, lang := range []string{"", "de", "fr", "es", "it"} {
			if read, ok := value.ParseColour(c, lang); ok {
				seen = append(seen, read...)
			}
		}
	}
	return !slices.ContainsFunc(code, func(h value.Hue) bool {
		return !slices.ContainsFunc(seen, func(s value.Hue) bool { return s.Of == h.Of })
	})
}

// inWords is a cell of a list whose colours are one letter each with the words for them: rows of the list say them, or old habit.
func inWords(list, cell string) string {
	if said := inTongue(list, cell); said != cell {
		return said
	}
	in := func(s string) bool { return strings.HasPrefix(list, s) }
	if in("wh19-") || in("wh20-") { // their other cells leave one meaning
		switch cell {
		case "bl":
			return "blue"
		case "gr":
			return "green"
		case "br":
			return "brown"
		}
	}
	if in("tm11-") || in("tm12-") || in("tm13-") || in("dd29-") { // a legend below the table says them
		return strings.NewReplacer("DBU", "dark blue", "DKB", "dark blue", "HGR", "light grey", "LGN", "light green", "BLC",
			"light blue").Replace(cell)
	}
	if !slices.ContainsFunc([]string{"qu01-", "qu02-", "qu09-", "w04-", "obl01-", "obl02-", "obl03-", "obl05-", "obl31-",
		"obl37-", "obl38-",
		"obl32-", "obl33-"}, in) || len(cell) > 3 {
		return cell
	}
	return strings.Trim(strings.NewReplacer("LG", "light green/", "L", "blue/", "N", "brown/", "R", "red/", "U", "blue/", "B", "black/",
		"Y", "yellow/", "G", "green/", "W", "white/", "P", "purple/", "K", "pink/", "S", "grey/", "O", "orange/",
		"/", "").Replace(cell), "/")
}

// above reports whether some cell says "as above", or has words that the report says were taken so.
func (b *back) above() bool {
	return ditto(b.cells) || slices.ContainsFunc(b.rep.Findings, func(f report.Finding) bool {
		return f.Rule == "as above" && slices.ContainsFunc(strings.Split(f.What, ", "), func(w string) bool {
			return len(w) > 3 && b.holds(w)
		})
	})
}

// ditto reports whether some cell says "as above".
func ditto(cells []string) bool {
	return slices.ContainsFunc(cells,
		func(c string) bool { return slices.Contains([]string{`"`, "ditto", "do", "idem"}, strings.ToLower(c)) })
}

// Nothing is lost: every cell of a row that tells of a wire stands in the harness or in the report, or is a value that the wire
// has under another spelling.
func TestNoCellOfARowIsLost(t *testing.T) {
	n := 0
	for _, l := range shorttest.Some(kindsOfLists(t)) {
		tables, err := table.Read(l.Name, l.data, table.Limits{})
		if err != nil {
			t.Fatal(err)
		}
		h, rep, err := wirelist.Import(tables, draft.Options{})
		if err != nil {
			continue
		}
		if l.Name == "m05-blocks-right.csv" || strings.HasSuffix(l.Name, "-in-columns-of-their-own.csv") {
			continue // a table of something else stands in the same rows, and is left out as a whole
		}
		if slices.ContainsFunc([]string{"pn0", "bn09-", "bn15-", "bn28-", "bn30-", "ev05-"}, func(n string) bool {
			return strings.HasPrefix(l.Name, n)
		}) {
			continue // each cell is a line, in a language that the harness is not in, or has the keys of its values
		}
		said := plain(string(file.Encode(file.Document{Harness: h})) + strings.Join(rep.Full(), "\n"))
		for i := range h.Wires {
			w := &h.Wires[i]
			for _, r := range rep.Rows[w.ID] {
				for _, cell := range rowAt(tables, r) {
					if strings.HasPrefix(l.Name, "bn14-") { // a key stands before each value
						cell = cell[strings.IndexByte(cell, '=')+1:]
					} else if strings.HasPrefix(l.Name, "bn16-") {
						cell = cell[strings.IndexByte(cell, ' ')+1:]
					}
					if mm, ok := rep.Lengths[w.ID]; ok {
						cell = withoutLength(cell, mm)
					}
					if n++; !strings.Contains(said, plain(cell)) && !isValueOf(w, &h, inWords(l.Name, cell)) && !partsSaid(said, cell) {
						t.Errorf("%s, row %d: %q is lost\n%s", l.Name, r.Row, cell, dump(&h, strings.Join(rep.Full(), "\n")))
					}
				}
			}
		}
	}
	if n < 500 {
		t.Errorf("%d cells", n)
	}
}

// withoutLength takes the length of a wire out of a line that says more: its branches have it, together.
func withoutLength(cell string, mm unit.Millimetre) string {
	all := strings.Fields(cell)
	for i := range len(all) - 1 {
		if read, ok := value.ParseLength(strings.Trim(all[i]+" "+all[i+1], ",;"), "", value.MarkUnknown); ok && read == mm {
			return strings.Join(slices.Delete(all, i, i+2), " ")
		}
	}
	return cell
}

// isValueOf reports whether a cell is a value that a wire has in another spelling, or a word that says how it is.
func isValueOf(w *model.Wire, h *model.Harness, cell string) bool {
	if value.IsNothing(cell) || name.StateOf(cell) != name.Used || cable.YesOrNo(cell) != "" || ditto([]string{cell}) ||
		cable.IsBracket(cell) {
		return true
	}
	for _, lang := range []string{"", "de", "fr", "es", "it"} {
		if _, ok := value.ParseColour(cell, lang); ok && w.Colour.Set {
			return true
		}
		if _, ok := value.SizeAndColour(cell, value.BareAWG, lang, value.MarkUnknown); ok && w.Colour.Set && w.Size != "" {
			return true
		}
	}
	for _, bare := range []value.Bare{value.BareAWG, value.BareMM2} {
		if g, ok := value.ParseGauge(squareword.Whole(cell), bare, value.MarkUnknown); ok && (g.Size == "" || w.Size == g.Size) {
			return true
		}
	}
	if _, ok := value.ParseLength(cell, "mm", value.MarkUnknown); ok && len(h.Branches) > 0 {
		return true
	}
	_, amps := value.ParseCurrent(cell, false, value.MarkUnknown)
	return amps && (w.Amps.Set || len(h.Feeds) > 0) || len(cable.Partners(cell)) > 0 || cable.Words(cell).IsCable()
}

// partsSaid reports whether each word of a cell stands somewhere: an end is parted in its connector and its cavity.
func partsSaid(said, cell string) bool {
	for _, word := range strings.FieldsFunc(cell, func(r rune) bool { return strings.ContainsRune(" :/,;-&()[]–>@", r) }) {
		word = strings.TrimRight(word, ".") // the full stop of a sentence
		w := strings.ToLower(word)
		if f := table.Fold(w); words.IsCavityLead(f) || words.GoesTo(f) || words.ComesFrom(f) || words.IsArticle(f) ||
			slices.Contains(words.ToWords(), w) {
			continue
		}
		if w != "awg" && w != "ga" && w != "zum" && w != "zur" && w != "geht" && w != "van" && w != "naar" && w != "de" &&
			w != "fil" && w != "du" && w != "au" && w != "comes" && w != "giunzione" && w != "goes" && w != "kommt" && w != "—" &&
			w != "see" && w != "siehe" && !isSizeWord(w) && name.StateOf(w) == name.Used &&
			!strings.Contains(said, plain(word)) && !isColourWord(w) {
			return false
		}
	}
	return true
}

// isColourWord reports whether a word within a cell is a colour, which the harness has as a code.
func isColourWord(w string) bool {
	_, ok := value.ParseColour(w, "")
	return ok
}

// isSizeWord reports whether a word within a cell is a size, which the harness has without its unit.
func isSizeWord(w string) bool {
	g, ok := value.ParseGauge(w, value.BareAWG, value.MarkUnknown)
	return ok && g.Size != ""
}
