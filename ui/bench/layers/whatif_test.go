package layers_test

import (
	"math/rand/v2"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/query/whatif"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/model/shorttest"
	"contralay/model/unit"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/layers"
	"contralay/ui/bench/layers/ways"
)

// atLayers is the demonstration as the program has it, at the step Layers.
func atLayers(t *testing.T, w, h int) *desk.Model {
	t.Helper()
	m := benchtest.WaysAlone(benchtest.Open(t, "demo.toml"))
	benchtest.Size(m, w, h)
	benchtest.Press(m, "right")
	return m
}

// lineWith is the first line of the screen that has a text, without what marks better and worse.
func lineWith(t *testing.T, m *desk.Model, text string) string {
	t.Helper()
	for _, l := range strings.Split(benchtest.View(m), "\n") {
		if strings.Contains(l, text) {
			return l
		}
	}
	t.Fatalf("%q is not on the screen:\n%s", text, benchtest.View(m))
	return ""
}

// shows checks that a line has figures, each by itself, in their order.
func shows(t *testing.T, line string, figures ...string) {
	t.Helper()
	at := 0
	for _, f := range figures {
		found := regexp.MustCompile(`(^|\s)` + regexp.QuoteMeta(f) + `[-+]?(\s|$)`).FindStringIndex(line[at:])
		if found == nil {
			t.Errorf("%q lacks %s", line, f)
			return
		}
		at += found[1] - 1
	}
}

// figuresOf is what the table is to show of a way: OD, tube, mass and least bend, made of the harness as the command
// figures would have it, not of what the table has worked out.
func figuresOf(t *testing.T, m *desk.Model, kind, says string) []string {
	t.Helper()
	for _, k := range whatif.Kinds(m.Sheet, m.Branch) {
		for _, v := range k.Values {
			if k.ID != kind || v.Says != says {
				continue
			}
			h, err := whatif.Changed(m.Sheet, m.Branch, v)
			if err != nil {
				t.Fatal(err)
			}
			return inColumns(m, complete(h, m.Cfg.Cat))
		}
	}
	t.Fatalf("there is no %s %s", kind, says)
	return nil
}

// completed holds what complete worked out, by the text of the harness.
var (
	completed = map[string]*sheet.Sheet{}
	before    *sheet.Sheet
)

// complete is the sheet of a harness as the command figures would have it. Two tests ask for the same: it is worked out
// once, and branches that lie as in the harness before, which no bench has touched, are not planned again.
func complete(h *model.Harness, cat *catalogue.Catalogue) *sheet.Sheet {
	text := string(file.Encode(file.Document{Harness: *h}))
	if completed[text] == nil {
		before = calc.Complete(h, cat, before)
		completed[text] = before
	}
	return completed[text]
}

func inColumns(m *desk.Model, s *sheet.Sheet) []string {
	b := &s.Branches[m.Branch]
	tube, _, _ := strings.Cut(b.Sheath.Tube.V.ShelfLabel, " (")
	return []string{unit.Fixed(b.OverMM, 1), tube, unit.Fixed(b.Gram.V, 0), unit.Fixed(b.Bend.MinMM, 0)} // halves as a person rounds
}

// What a person asks first is beside the present with at most six keys, in OD, tube, mass and bend; and coming back
// leaves the step as it was.
func TestWhatIfInSixKeys(t *testing.T) {
	shorttest.Turn(t)
	m := atLayers(t, 80, 24)
	h := m.H
	for _, size := range [][2]int{{80, 24}, {120, 40}} {
		benchtest.Size(m, size[0], size[1])
		for _, c := range []struct {
			name string
			keys []string
			ways [][2]string // kind, and how the value is called
		}{
			{"a centre of three", []string{"1", "enter"}, [][2]string{{"centre", "three"}}},
			{"three spares fewer, one more", []string{"2", "enter"}, [][2]string{{"spares", "1"}, {"spares", "5"}}},
			{"all wires in AS22759/34", []string{"3", "enter"}, [][2]string{{"spec", "AS22759/34"}}},
			{"the other hand", []string{"4", "enter"}, [][2]string{{"hand", "RH"}}},
		} {
			if len(c.keys) > 6 {
				t.Errorf("%s: %d keys", c.name, len(c.keys))
			}
			benchtest.Press(m, c.keys...)
			for _, w := range c.ways {
				shows(t, lineWith(t, m, "  "+w[1]+" "), figuresOf(t, m, w[0], w[1])...)
			}
			shows(t, lineWith(t, m, "= "), inColumns(m, m.Sheet)...)
			page := benchtest.View(m)
			if benchtest.Press(m, "backspace"); m.H != h || m.Top() != layers.Step {
				t.Errorf("%s: it came back to %s, changed %v", c.name, m.Top(), m.H != h)
			}
			if benchtest.Press(m, c.keys...); benchtest.View(m) != page {
				t.Errorf("%s: the page is another on coming back:\n%s\nwas\n%s", c.name, benchtest.View(m), page)
			}
			benchtest.Press(m, "esc")
		}
	}
}

// Without a key each row shows another value with its figures, at 80 x 24 those of the first kinds; + and - step it, and
// it stays stepped after a page, another step and another branch.
func TestRowIsSteppedAndStays(t *testing.T) {
	shorttest.Turn(t)
	m := atLayers(t, 80, 24)
	benchtest.To(t, m, "2 spare wires")
	shows(t, lineWith(t, m, "2 spare wires 5"), figuresOf(t, m, "spares", "5")...)
	benchtest.Press(m, "-", "-", "-") // past the four that there are
	row := lineWith(t, m, "2 spare wires 1")
	shows(t, row, figuresOf(t, m, "spares", "1")...)
	if strings.Contains(row, "working it out") {
		t.Errorf("%q", row)
	}
	h := m.H
	for _, away := range [][]string{{"enter", "backspace"}, {"enter", "down", "down", "esc"}, {"left", "right"}, {"right", "left"},
		{"/", "esc", "enter"}} {
		for _, key := range away {
			later(m, key)
		}
		for m.Branch != 0 {
			later(m, "/")
		}
		m.Step = layers.Step
		benchtest.Ready(m)
		if now := lineWith(t, m, "2 spare wires 1"); now != row {
			t.Errorf("after %v the row is %q, was %q", away, now, row)
		}
	}
	if m.H != h || m.History.Steps() > 0 {
		t.Error("looking changed the harness")
	}
}

// What is taken is what was shown; undone, the harness is the same to the byte; the cursor and the table stay.
func TestWayIsTakenAndUndone(t *testing.T) {
	shorttest.Turn(t)
	m := atLayers(t, 80, 24)
	before, table := bytesOf(m), benchtest.View(m)
	third := rand.IntN(3)
	for n, c := range []struct{ number, kind, says string }{
		{"1", "centre", "three"}, {"2", "spares", "1"}, {"2", "spares", "6"}, {"3", "spec", "AS22759/34"}, {"4", "hand", "RH"},
		{"5", "sheath", "AS23053/5"}, {"7", "size 20", "22"},
	} {
		if n%3 != third && !shorttest.Long() {
			continue
		}
		want := figuresOf(t, m, c.kind, c.says)
		benchtest.Press(m, c.number, "enter")
		benchtest.To(t, m, "  "+c.says+" ")
		shows(t, lineWith(t, m, "  "+c.says+" "), want...)
		later(m, "enter")
		if m.Trouble || m.Top() != layers.Step {
			t.Fatalf("%v: at %s: %s", c, m.Top(), m.Says)
		}
		shows(t, strings.Join(inColumns(m, m.Sheet), " "), want...)
		if _, r := m.Hand(); r.Key != "kind "+c.kind {
			t.Errorf("%v: the row in hand is %q", c, r.Key)
		}
		if m.History.Steps() != 1 {
			t.Errorf("%v: %d steps to undo", c, m.History.Steps())
		}
		later(m, "backspace")
		if bytesOf(m) != before {
			t.Errorf("%v: undone, the file is another", c)
		}
	}
	benchtest.OnRow(t, m, "centre  C1")
	if now := benchtest.View(m); lineOf(now, 6) != lineOf(table, 6) {
		t.Errorf("undone, the table is\n%s\nwas\n%s", now, table)
	}
}

// later presses a key and leaves what it starts beside the screen undone.
func later(m *desk.Model, key string) {
	benchtest.Update(m, benchtest.Message(key))
	benchtest.View(m)
	clear(m.Pending)
}

// lineOf is the lines of a screen down to one.
func lineOf(screen string, last int) string {
	return strings.Join(strings.Split(screen, "\n")[:last], "\n")
}

// bytesOf is the file that a bench would write.
func bytesOf(m *desk.Model) string { return string(file.Encode(m.Doc())) }

// A way that is kept stands in the table under its letter, in the file, and after a load; taken up it has the figures
// that were shown for it.
func TestKeptVariantSurvives(t *testing.T) {
	shorttest.Turn(t)
	m := atLayers(t, 80, 24)
	ways := [][3]string{{"1", "centre", "three"}, {"2", "spares", "6"}, {"2", "spares", "1"}, {"3", "spec", "AS22759/34"},
		{"4", "hand", "RH"}, {"5", "sheath", "AS23053/5"}, {"7", "size 20", "22"}}
	if !shorttest.Long() {
		ways = ways[:3]
	}
	want := map[string][]string{}
	named := map[string]string{"A": "centre", "B": "spare", "C": "spare", "D": "spec", "E": "outer", "F": "sheath", "G": "size"}
	for n, w := range ways {
		letter := string(rune('A' + n))
		benchtest.Press(m, w[0], "enter")
		benchtest.To(t, m, "  "+w[2]+" ")
		want[letter] = figuresOf(t, m, w[1], w[2])
		benchtest.Press(m, "+")
		if m.Trouble || !strings.Contains(m.Says, "kept as variant "+letter) {
			t.Fatalf("%v: %s", w, m.Says)
		}
		benchtest.Press(m, "backspace")
	}
	kept := m.H // what was worked out before they were kept is taken with them
	benchtest.Press(m, "4", "enter")
	benchtest.To(t, m, "  RH ")
	later(m, "enter")
	if m.H == kept || len(m.H.Branches[0].Asides) != len(ways) {
		t.Errorf("taken: %v, and %d variants are left", m.H != kept, len(m.H.Branches[0].Asides))
	}
	later(m, "backspace")
	path := filepath.Join(t.TempDir(), "kept.toml")
	if err := file.Save(path, m.Doc()); err != nil {
		t.Fatal(err)
	}
	d, err := file.Load(path)
	if err != nil {
		t.Fatal(err)
	}
	if string(file.Encode(d)) != bytesOf(m) {
		t.Error("saved and loaded, the file is another")
	}
	c := benchtest.Config(t, "demo.toml")
	c.Doc, c.Known = d, m.Sheet
	loaded := benchtest.WaysAlone(benchtest.OpenWith(t, "kept.toml", c))
	benchtest.Press(loaded, "right")
	h := loaded.H
	for n := range ways {
		letter := string(rune('A' + n))
		r := benchtest.OnRow(t, loaded, "  "+letter+"  "+named[letter])
		shows(t, r.Line(), want[letter]...)
		benchtest.Press(loaded, "enter")
		later(loaded, "enter")
		if loaded.H == h {
			t.Fatalf("%s was not taken: %s", letter, loaded.Says)
		}
		shows(t, strings.Join(inColumns(loaded, complete(loaded.H, loaded.Cfg.Cat)), " "), want[letter]...)
		if got := len(loaded.H.Branches[0].Asides); got != len(ways) {
			t.Errorf("%d variants are left once %s is taken", got, letter)
		}
		later(loaded, "backspace")
		if loaded.H != h {
			t.Errorf("%s is not undone", letter)
		}
	}
	benchtest.OnRow(t, loaded, "  B  spare")
	benchtest.Press(loaded, ".")
	if v := benchtest.View(loaded); strings.Contains(v, "  B  spare") || !strings.Contains(v, "  C  spare") {
		t.Errorf("B is dropped and C keeps its letter:\n%s", v)
	}
}

// Of a branch taken at random each row shows the figures of the harness that is changed in that way.
func TestRowsShowTheirWays(t *testing.T) {
	shorttest.Turn(t)
	r := rand.New(rand.NewPCG(21, 4))
	files, many := []string{"demo.toml", "trunk.toml", "every-key.toml", "built-up.toml"}, 2
	if shorttest.Long() { // with a large one
		files, many = append(files, "whole.toml"), 8
	}
	rows := 0
	for tries := 0; rows < many; tries++ {
		if tries > 20 {
			t.Fatalf("only %d rows were looked at", rows)
		}
		name := files[r.IntN(len(files))]
		m := benchtest.WaysAlone(benchtest.Open(t, name))
		benchtest.Size(m, 80, 24)
		m.Branch, m.Step = r.IntN(len(m.H.Branches)), layers.Step
		benchtest.Ready(m)
		for _, k := range whatif.Kinds(m.Sheet, m.Branch) {
			for _, row := range m.Page(m.ListWidth()).Rows {
				if row.Key != "kind "+k.ID || k.ID == "layup" || r.IntN(3) > 0 {
					continue
				}
				for _, v := range k.Values {
					if line := row.Line(); strings.Contains(line[:24], " "+v.Says+" ") && !strings.Contains(line, v.Says+" to ") {
						h, err := whatif.Changed(m.Sheet, m.Branch, v)
						if err != nil && strings.Contains(line, err.Error()[:10]) {
							continue // the row says why it cannot be
						}
						if err != nil {
							t.Fatalf("%s %s, %s %s: %v on %q", name, m.H.Branches[m.Branch].ID, k.ID, v.Says, err, line)
						}
						shows(t, line, inColumns(m, complete(h, m.Cfg.Cat))...)
						rows++
					}
				}
			}
		}
	}
}

// A length made longer and shorter again, without undo, leads back to the ways that were worked out for it.
func TestUpAndDownAgainFindsItsWays(t *testing.T) {
	shorttest.Turn(t)
	m := atLayers(t, 80, 24)
	for _, by := range []unit.Millimetre{50, -50} {
		m.Change(m.H.EditBranch(m.Branch, func(b *model.Branch) { b.LengthMM += by }), "")
		if w, wants := ways.Plan(m); wants != (by > 0) {
			t.Errorf("%v mm longer: it wants %q worked out, %v", by, w.Key, wants)
		}
	}
}

// Where a way would stop the build its row is marked, and no row begins on such a way while another can be built; where
// one cannot be at all its row says why, and Enter refuses it.
func TestWayThatCannotBe(t *testing.T) {
	shorttest.Turn(t)
	m := benchtest.Open(t, "demo.toml")
	m.Change(m.H.EditBranch(0, func(b *model.Branch) { b.Layers[1].Locked = model.Some(true) }), "")
	benchtest.WaysAlone(m)
	benchtest.Press(m, "right")
	for _, r := range m.Page(m.ListWidth()).Rows {
		if strings.HasPrefix(r.Key, "kind centre") && r.Mark != "" {
			t.Errorf("the row begins on %q, which stops", r.Line())
		}
	}
	benchtest.Press(m, "1", "enter")
	marked := 0
	for _, r := range m.Page(m.ListWidth()).Rows {
		h, err := whatif.Changed(m.Sheet, 0, valueOf(t, m, "centre", strings.Fields(r.Line()[2:])[0]))
		if err != nil {
			t.Fatal(err)
		}
		stops := 0
		for _, g := range complete(h, m.Cfg.Cat).Snags {
			if g.Level == sheet.Stop && strings.Contains(g.Says, "ayer") {
				stops++
			}
		}
		if (stops > 0) != (r.Mark == "!") {
			t.Errorf("%q is marked %q, with %d layers that stop", r.Line(), r.Mark, stops)
		}
		if r.Mark == "!" {
			marked++
		}
	}
	if marked == 0 {
		t.Error("no way is marked")
	}
	h := m.H
	benchtest.Press(m, "backspace", "3", "enter")
	r := benchtest.OnRow(t, m, "AS22759/34")
	if !strings.Contains(r.Detail, "is locked") || r.Show != nil {
		t.Errorf("a locked layer of another size: %q", r.Detail)
	}
	if benchtest.Press(m, "enter"); m.H != h || !m.Trouble || !strings.Contains(m.Says, "locked") {
		t.Errorf("taken: %v, %q", m.H != h, m.Says)
	}
}

// valueOf is a value of a kind, by what it is called.
func valueOf(t *testing.T, m *desk.Model, kind, says string) whatif.Value {
	t.Helper()
	for _, k := range whatif.Kinds(m.Sheet, m.Branch) {
		for _, v := range k.Values {
			if k.ID == kind && strings.HasPrefix(v.Says, says) {
				return v
			}
		}
	}
	t.Fatalf("there is no %s %q", kind, says)
	return whatif.Value{}
}
